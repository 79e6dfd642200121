import type { AnyNode, Pattern, Program } from "acorn";

/** A name that a script uses without declaring it. */
interface FreeName {
  readonly name: string;
  /** Used only where a `typeof` of the same name has been asked first. */
  readonly guarded: boolean;
}

type Scope = ReadonlySet<string>;
type Fields = Record<string, unknown>;

/**
 * The names that a script takes from its surroundings. `typeof name` itself asks nothing of them and
 * is not listed.
 *
 * Method: a walk with the scopes of functions, blocks, loops, classes and catch clauses; `var` and
 * functions are known in the whole of their function, before their line too.
 */
export function freeNames(program: Program): FreeName[] {
  const found: FreeName[] = [];
  visit(program, [declaredIn(program.body, true)], new Set(), found);
  return found;
}

function visit(node: AnyNode, scopes: readonly Scope[], guards: Scope, found: FreeName[]): void {
  const go = (child: unknown, inner = scopes, safe = guards) => {
    if (Array.isArray(child)) for (const one of child) go(one, inner, safe);
    else if (isNode(child)) visit(child, inner, safe, found);
  };
  switch (node.type) {
    case "Identifier":
      if (!scopes.some((scope) => scope.has(node.name))) {
        found.push({ name: node.name, guarded: guards.has(node.name) });
      }
      break;
    case "UnaryExpression":
      if (node.operator !== "typeof" || node.argument.type !== "Identifier") go(node.argument);
      break;
    case "MemberExpression":
      go(node.object);
      if (node.computed) go(node.property);
      break;
    case "Property":
    case "MethodDefinition":
      if (node.computed) go(node.key);
      go(node.value);
      break;
    case "LabeledStatement":
      go(node.body);
      break;
    case "BreakStatement":
    case "ContinueStatement":
    case "MetaProperty":
      break;
    case "IfStatement":
    case "ConditionalExpression": {
      go(node.test);
      const safe = new Set([...guards, ...typeofNames(node.test)]);
      go(node.consequent, scopes, safe);
      go(node.alternate, scopes, safe);
      break;
    }
    case "LogicalExpression":
      go(node.left);
      go(node.right, scopes, new Set([...guards, ...typeofNames(node.left)]));
      break;
    case "FunctionDeclaration":
    case "FunctionExpression":
    case "ArrowFunctionExpression": {
      const own = new Set(node.params.flatMap(namesIn));
      if (node.type !== "ArrowFunctionExpression") own.add("arguments");
      if (node.id) own.add(node.id.name);
      const body = node.body.type === "BlockStatement" ? node.body.body : [];
      const inner = [...scopes, own, declaredIn(body, true)];
      go(node.params, inner);
      go(node.body.type === "BlockStatement" ? body : node.body, inner);
      break;
    }
    case "ClassDeclaration":
    case "ClassExpression":
      go(node.superClass);
      go(node.body, [...scopes, new Set(node.id ? [node.id.name] : [])]);
      break;
    case "CatchClause": {
      const inner = [...scopes, new Set(node.param ? namesIn(node.param) : [])];
      go(node.param, inner);
      go(node.body, inner);
      break;
    }
    case "BlockStatement":
      go(node.body, [...scopes, declaredIn(node.body, false)]);
      break;
    case "SwitchStatement": {
      go(node.discriminant);
      const inside = node.cases.flatMap((one) => one.consequent);
      go(node.cases, [...scopes, declaredIn(inside, false)]);
      break;
    }
    case "ForStatement":
    case "ForInStatement":
    case "ForOfStatement": {
      const head = node.type === "ForStatement" ? node.init : node.left;
      const own =
        head?.type === "VariableDeclaration" ? declaredIn([head], false) : new Set<string>();
      everyChild(node, (child) => go(child, [...scopes, own]));
      break;
    }
    default:
      everyChild(node, (child) => go(child));
  }
}

function everyChild(node: AnyNode, go: (child: unknown) => void): void {
  for (const [key, child] of Object.entries(node as unknown as Fields))
    if (key !== "type") go(child);
}

function isNode(value: unknown): value is AnyNode {
  return typeof value === "object" && value !== null && typeof (value as Fields).type === "string";
}

/** Names asked for by `typeof` anywhere in an expression. */
function typeofNames(node: AnyNode): string[] {
  if (node.type === "UnaryExpression" && node.operator === "typeof") {
    return node.argument.type === "Identifier" ? [node.argument.name] : [];
  }
  const names: string[] = [];
  everyChild(node, (child) => {
    for (const one of Array.isArray(child) ? child : [child]) {
      if (isNode(one)) names.push(...typeofNames(one));
    }
  });
  return names;
}

/** Names that a list of statements declares; with `hoisted`, every `var` below them as well. */
function declaredIn(statements: readonly AnyNode[], hoisted: boolean): Set<string> {
  const names = new Set<string>();
  for (const statement of statements) {
    if (statement.type === "VariableDeclaration" || statement.type === "ClassDeclaration") {
      for (const name of declaredBy(statement)) names.add(name);
    }
    if (statement.type === "FunctionDeclaration") names.add(statement.id?.name ?? "");
    if (hoisted) for (const name of varsBelow(statement)) names.add(name);
  }
  return names;
}

function declaredBy(node: AnyNode): string[] {
  if (node.type === "ClassDeclaration") return node.id ? [node.id.name] : [];
  if (node.type !== "VariableDeclaration") return [];
  return node.declarations.flatMap(({ id }) => namesIn(id));
}

function varsBelow(node: AnyNode): string[] {
  if (/Function/.test(node.type)) return [];
  const names = node.type === "VariableDeclaration" && node.kind === "var" ? declaredBy(node) : [];
  everyChild(node, (child) => {
    for (const one of Array.isArray(child) ? child : [child]) {
      if (isNode(one)) names.push(...varsBelow(one));
    }
  });
  return names;
}

/** Names that a pattern binds. */
function namesIn(pattern: Pattern): string[] {
  switch (pattern.type) {
    case "Identifier":
      return [pattern.name];
    case "ObjectPattern":
      return pattern.properties.flatMap((one) =>
        one.type === "RestElement" ? namesIn(one.argument) : namesIn(one.value),
      );
    case "ArrayPattern":
      return pattern.elements.flatMap((one) => (one === null ? [] : namesIn(one)));
    case "AssignmentPattern":
      return namesIn(pattern.left);
    case "RestElement":
      return namesIn(pattern.argument);
    default:
      return [];
  }
}
