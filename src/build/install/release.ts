import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { projectVersion } from "../version";
import { releaseFiles } from "./release-files";
import { zipFile } from "./zip-file";

/** Makes the zip that is handed out, from dist/: npm run release, which builds it first. */
const version = projectVersion();
const files = await releaseFiles(process.cwd(), version);
const made = path.join("out", `nursery-batches-${version}.zip`);
const bytes = zipFile(files);
mkdirSync("out", { recursive: true });
writeFileSync(made, bytes);
console.log(`${made}: ${bytes.length} bytes, ${files.length} files`);
