import { describe, expect, it } from "vitest";
import { localeOrder } from "../../src/door/locale-order";

const LOCALES = [
  ...["en_US", "en_GB", "en_IE", "en_AU", "en_NZ", "en_CA", "en_IN", "en_ZA", "en_PH", "en_SG"],
  ...["en_NG", "en_GH", "en_KE", "en_UG", "en_JM", "en_TT", "en_BZ", "en_MY", "en_HK", "en_PK"],
  ...["en_PG", "en_ZW", "en_BW", "en_FJ", "en_GU", "en_VI", "en_CM", "en_LR", "en_SL"],
  ...["fr_FR", "fr_BE", "fr_CH", "fr_CA", "fr_CI", "fr_CM", "fr_TG"],
  ...["pt_BR", "pt_PT", "pt_AO", "pt_MZ", "es_ES", "es_MX", "es_CO", "es_EC", "es_PE", "es_DO"],
  ...["es_CR", "es_GT", "es_HN", "es_NI", "es_VE", "es_AR", "es_CL", "es_BO", "es_PA", "es_PR"],
  ...["es_US", "ca_ES", "gl_ES", "eu_ES", "id_ID", "ms_MY", "vi_VN", "fil_PH", "th_TH", "km_KH"],
  ...["lo_LA", "my_MM", "hi_IN", "bn_IN", "ta_IN", "te_IN", "ml_IN", "kn_IN", "gu_IN", "mr_IN"],
  ...["si_LK", "ne_NP", "bn_BD", "ur_PK", "ja_JP", "ko_KR", "zh_CN", "zh_TW", "zh_HK", "mn_MN"],
  ...["de_DE", "de_AT", "de_CH", "it_IT", "nl_NL", "nl_BE", "da_DK", "nb_NO", "nn_NO", "sv_SE"],
  ...["sv_FI", "fi_FI", "is_IS", "pl_PL", "cs_CZ", "sk_SK", "sl_SI", "hr_HR", "sr_RS", "ro_RO"],
  ...["bg_BG", "hu_HU", "lt_LT", "lv_LV", "et_EE", "el_GR", "tr_TR", "ru_RU", "uk_UA", "be_BY"],
  ...["ka_GE", "hy_AM", "az_AZ", "kk_KZ", "he_IL", "fa_IR", "sw_KE", "sw_TZ", "am_ET", "af_ZA"],
  ...["zu_ZA", "xh_ZA", "mg_MG", "cy_GB", "ga_IE", "sq_AL", "mk_MK", "bs_BA"],
];

type Order = "day-first" | "month-first" | null;

/** The order of a locale's dates of numbers by Unicode CLDR, as this runtime's Intl carries it. */
function orderByIntl(locale: string, options: Intl.DateTimeFormatOptions): Order {
  // The civil calendar and plain digits, as a spreadsheet shows; the order stays the locale's.
  const tag = `${locale.replace("_", "-")}-u-ca-gregory-nu-latn`;
  const parts = new Intl.DateTimeFormat(tag, options)
    .formatToParts(Date.UTC(2026, 8, 13))
    .map(({ type }) => type)
    .filter((type) => type === "year" || type === "month" || type === "day");
  expect([locale, [...parts].sort()]).toEqual([locale, ["day", "month", "year"]]);
  if (parts[0] === "year") return null;
  return parts.indexOf("day") < parts.indexOf("month") ? "day-first" : "month-first";
}

describe("localeOrder against Unicode CLDR through Intl", () => {
  const told = LOCALES.filter((locale) => {
    const short = orderByIntl(locale, { dateStyle: "short" });
    const numeric = { year: "numeric", month: "numeric", day: "numeric" } as const;
    // Where CLDR's own two patterns differ there is nothing to be held to.
    return short === orderByIntl(locale, numeric);
  });

  it("is told by nearly every locale", () => {
    expect(
      Intl.DateTimeFormat.supportedLocalesOf(LOCALES.map((one) => one.replace("_", "-"))).length,
    ).toBe(LOCALES.length);
    expect(told.length).toBeGreaterThan(LOCALES.length - 3);
  });

  it.each(told)("%s", (locale) => {
    expect(localeOrder(locale)).toBe(orderByIntl(locale, { dateStyle: "short" }));
  });

  it("reads a locale with a hyphen or a script alike", () => {
    expect(localeOrder("en-GB")).toBe("day-first");
    expect(localeOrder("zh_Hans_CN")).toBeNull();
    expect(localeOrder("sr_Latn_RS")).toBe("day-first");
    expect(localeOrder("en")).toBe("month-first");
  });
});

describe("a locale that is not known", () => {
  // Read both ways or neither, a wrong guess would move every date of the sheet.
  it.each(["", "x", "not a locale"])("%j settles nothing", (locale) => {
    expect(localeOrder(locale)).toBeNull();
  });
});
