/** Which columns name people, and their initials. */

export { type Initials, initialsOf } from "./initials";
export { namesPeople } from "./people-columns";
export { peopleOf } from "./people-of";
