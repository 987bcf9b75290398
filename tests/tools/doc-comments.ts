import type { JsonSchema } from '@valibot/to-json-schema';
import ts from 'typescript';

const options: ts.CompilerOptions = {
  strict: true,
  lib: ['lib.es2023.d.ts'],
  types: [],
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
};

/** Where a TypeScript type is: a file, and the name that it exports. */
export interface TypePlace {
  readonly file: string;
  readonly name: string;
}

/**
 * A JSON Schema with descriptions: the doc comments of the TypeScript type that it checks, so that what a field means is
 * written once. Where a field has no comment its type's is taken.
 */
export function describeByType(schema: JsonSchema, { file, name }: TypePlace): JsonSchema {
  const program = ts.createProgram([file], options);
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const exported = source && checker.getSymbolAtLocation(source)?.exports?.get(ts.escapeLeadingUnderscores(name));
  if (!exported) throw new Error(`${file} exports no ${name}`);
  return new Describer(checker).node(schema, checker.getDeclaredTypeOfSymbol(exported));
}

class Describer {
  private readonly checker: ts.TypeChecker;

  constructor(checker: ts.TypeChecker) {
    this.checker = checker;
  }

  /** `field` is the property that holds the value, if one does. */
  node(schema: JsonSchema, type: ts.Type, field?: ts.Symbol): JsonSchema {
    const described = this.children(schema, this.checker.getNonNullableType(type));
    const description = this.comment(field) ?? this.comment(type.aliasSymbol) ?? this.comment(type.symbol);
    return description === undefined ? described : { description, ...described };
  }

  private children(schema: JsonSchema, type: ts.Type): JsonSchema {
    const { properties, items, additionalProperties, anyOf, oneOf } = schema;
    const inner = (each: JsonSchema): JsonSchema => this.children(each, type);
    return {
      ...schema,
      ...(properties && { properties: this.properties(properties, type) }),
      ...(isNode(items) && { items: this.element(items, type, ts.IndexKind.Number) }),
      ...(isNode(additionalProperties) && {
        additionalProperties: this.element(additionalProperties, type, ts.IndexKind.String),
      }),
      ...(anyOf && { anyOf: anyOf.filter(isNode).map(inner) }),
      ...(oneOf && { oneOf: oneOf.filter(isNode).map(inner) }),
    };
  }

  private properties(properties: NonNullable<JsonSchema['properties']>, type: ts.Type): JsonSchema['properties'] {
    const described = Object.entries(properties).map(([name, schema]) => {
      const field = partsOf(type)
        .map((part) => this.checker.getPropertyOfType(part, name))
        .find(Boolean);
      const isKnown = field !== undefined && isNode(schema);
      return [name, isKnown ? this.node(schema, this.checker.getTypeOfSymbol(field), field) : schema] as const;
    });
    return Object.fromEntries(described);
  }

  private element(schema: JsonSchema, type: ts.Type, kind: ts.IndexKind): JsonSchema {
    const element = partsOf(type)
      .map((part) => this.checker.getIndexTypeOfType(part, kind))
      .find(Boolean);
    return element ? this.node(schema, element) : schema;
  }

  /** The comment of something of ours: what TypeScript's own library says of `Readonly` describes no field. */
  private comment(symbol: ts.Symbol | undefined): string | undefined {
    const isOurs = symbol?.declarations?.some((each) => !each.getSourceFile().isDeclarationFile);
    const text = isOurs ? ts.displayPartsToString(symbol?.getDocumentationComment(this.checker)) : '';
    return text === '' ? undefined : text.replace(/\s+/g, ' ');
  }
}

function isNode(schema: unknown): schema is JsonSchema {
  return typeof schema === 'object' && schema !== null && !Array.isArray(schema);
}

function partsOf(type: ts.Type): readonly ts.Type[] {
  return type.isUnion() ? type.types : [type];
}
