// Made by npm run words; a test holds it equal.

/** The languages in which headers are read. */
export const LANGUAGES_READ = "English, French, Indonesian, Portuguese and Spanish";
