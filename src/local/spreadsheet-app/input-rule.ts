import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { ServiceError, signatureError } from "./service-error";

/** What a cell with a check on its input accepts. */
export interface InputRule {
  readonly kind: "checkbox" | "list" | "number" | "day";
  /** For a list: the texts it offers. */
  readonly values: readonly string[];
  /** False to refuse other values, true to mark them only. */
  readonly allowInvalid: boolean;
}

/** The rules behind the objects that scripts hold. */
const builtRules = new WeakMap<object, InputRule>();

/** The rule behind an object that a script hands over. @throws ServiceError when it is none */
export function inputRuleOf(object: unknown, method: string): InputRule {
  const rule = typeof object === "object" && object ? builtRules.get(object) : undefined;
  if (!rule) throw signatureError([object], method);
  return rule;
}

/** SpreadsheetApp.newDataValidation(): refuses nothing until it is told to require something. */
export function dataValidationBuilder(run: Execution): ServiceObject {
  // A rule accepts other values with a mark unless told otherwise.
  let rule: InputRule | null = null;
  let allowInvalid = true;
  const ruleTo = (kind: InputRule["kind"], values: readonly string[]) => {
    rule = { kind, values, allowInvalid };
    return builder;
  };
  const builder = serviceObject(run, "DataValidationBuilder", {
    methods: {
      requireCheckbox(checked?: unknown, unchecked?: unknown) {
        // Boxes with values of their own are left out: this add-in uses TRUE and FALSE.
        if (checked !== undefined || unchecked !== undefined) {
          throw signatureError(
            [checked, unchecked],
            "SpreadsheetApp.DataValidationBuilder.requireCheckbox",
          );
        }
        return ruleTo("checkbox", []);
      },
      requireValueInList(values: unknown, showDropdown?: unknown) {
        const method = "SpreadsheetApp.DataValidationBuilder.requireValueInList";
        if (!Array.isArray(values)) throw signatureError([values, showDropdown], method);
        return ruleTo("list", values.map(String));
      },
      setAllowInvalid(allow: unknown) {
        allowInvalid = Boolean(allow);
        return builder;
      },
      build() {
        if (!rule) throw new ServiceError("A rule needs something that it requires.");
        const built = serviceObject(run, "DataValidation", {
          methods: {
            getAllowInvalid: () => allowInvalid,
          },
        });
        builtRules.set(built, { ...rule, allowInvalid });
        return built;
      },
    },
  });
  return builder;
}
