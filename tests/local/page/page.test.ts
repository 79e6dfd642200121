// One file, so that the suites run after one another: two browsers at once would starve each other.
import "./grid-suite";
import "./sidebar-suite";
import "./saving-suite";
