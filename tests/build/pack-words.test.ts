import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { packWords } from "../../src/build/pack-words";
import { allLanguages } from "../../src/core/words/all-languages";

async function bundled(plugins: Parameters<typeof build>[0]["plugins"] = []): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: ["src/core/words/all-languages.ts"],
    bundle: true,
    write: false,
    format: "esm",
    minify: true,
    charset: "utf8",
    plugins,
  });
  return outputFiles[0]?.text ?? "";
}

describe("the words in the built file", () => {
  it("are those of the files of words, in less room", async () => {
    const packed = await bundled([packWords]);
    expect(Buffer.byteLength(packed)).toBeLessThan(Buffer.byteLength(await bundled()) * 0.85);
    const module: unknown = await import(`data:text/javascript,${encodeURIComponent(packed)}`);
    const { allLanguages: built } = module as { readonly allLanguages: typeof allLanguages };
    expect(built).toEqual(allLanguages);
  });
});
