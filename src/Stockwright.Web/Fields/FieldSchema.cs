using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Stockwright.Web.Fields;

/// <summary>Describes fields in the OpenAPI document, each as a property of the object a program sends.</summary>
internal static class FieldSchema
{
    /// <summary>Adds the fields to the schema of a type that has the rest of them: the arrays of rows.</summary>
    /// <typeparam name="TInput">The type the interface accepts.</typeparam>
    /// <param name="options">The document's options.</param>
    /// <param name="rows">The fields.</param>
    public static void Describe<TInput>(this OpenApiOptions options, IReadOnlyList<FieldRow> rows) => options.AddSchemaTransformer((schema, context, _) =>
    {
        if (context.JsonTypeInfo.Type == typeof(TInput) && context.JsonPropertyInfo is null)
        {
            schema.Properties ??= new Dictionary<string, IOpenApiSchema>(StringComparer.Ordinal);
            foreach (FieldRow row in rows)
            {
                schema.Properties[row.Name] = Property(row);
            }
        }

        return Task.CompletedTask;
    });

    // Numbers may also be text as a cook writes it.
    private static OpenApiSchema Property(FieldRow row) => new()
    {
        Description = row.Describe(),
        Type = row.Kind switch
        {
            FieldKind.Number => JsonSchemaType.Null | JsonSchemaType.Number | JsonSchemaType.String,
            FieldKind.Whole => JsonSchemaType.Null | JsonSchemaType.Integer | JsonSchemaType.String,
            _ => JsonSchemaType.Null | JsonSchemaType.String,
        },
        Format = row.Kind switch { FieldKind.Number => "double", FieldKind.Whole => "int32", _ => null },
    };
}
