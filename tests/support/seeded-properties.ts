import fc from "fast-check";

// The same cases in every run, so that a red run is red for everybody; change the seed to look further.
fc.configureGlobal({ seed: 20261125 });
