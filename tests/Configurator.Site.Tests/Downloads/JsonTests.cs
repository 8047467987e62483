using System.Text;
using System.Text.Json;
using Configurator.Site.Downloads;
using Json.Schema;

namespace Configurator.Site.Tests.Downloads;

public class JsonTests
{
    // Source: JsonSchema.Net 8.0.5, an independent validator of JSON Schema 2020-12.
    [Fact]
    public void The_file_is_valid_against_the_schema_that_is_published_beside_it()
    {
        var schema = JsonSchema.FromText(Encoding.UTF8.GetString(Published.File(DocumentsJson.SchemaPath).Span));
        using var json = JsonDocument.Parse(Published.File(Published.Set.Json));
        Assert.True(schema.Evaluate(json.RootElement).IsValid);
        Assert.Equal("../../../../" + DocumentsJson.SchemaPath, json.RootElement.GetProperty("$schema").GetString());
    }

    [Fact]
    public void The_schema_refuses_a_row_that_is_no_list_of_texts()
    {
        var schema = JsonSchema.FromText(Encoding.UTF8.GetString(Published.File(DocumentsJson.SchemaPath).Span));
        using var json = JsonDocument.Parse(
            """{"machine":"m","configuration":"c","revision":"A","documents":[{"number":"n","state":"s","definitions":"d","title":"t","page":"p","tables":[{"id":"i","title":"t","columns":["a"],"rows":[[1]]}]}]}""");
        Assert.False(schema.Evaluate(json.RootElement).IsValid);
    }
}
