/** The bundler gathers styles into one file; importing them gives nothing. */
declare module "*.css";
