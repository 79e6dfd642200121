// Made by npm run sentences from the files of sentences; a test holds it equal.

export const ownFault = (d: { readonly name: string | number; readonly why: string | number }): string => d.name + " failed by a fault of its own. Please report it: " + d.why;
