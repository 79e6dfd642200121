import type { Injector } from "@univerjs/core";
import { FunctionType } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import type { CatalogueEntry } from "../../catalogue";

/**
 * Tells the formula helper about the add-in's functions: sentence and parameters. All parameters
 * look needed, as in the real helper, which does not know optional ones.
 */
export function registerFormulaHelp(
  injector: Injector,
  catalogue: readonly CatalogueEntry[],
): void {
  injector.get(IDescriptionService).registerDescriptions(
    catalogue.map(({ name, description, parameters }) => ({
      functionName: name.toUpperCase(),
      functionType: FunctionType.User,
      description,
      abstract: description,
      functionParameter: parameters.map((parameter) => ({
        name: parameter.name,
        detail: parameter.description,
        example: "",
        require: 1,
        repeat: 0,
      })),
    })),
  );
}
