using System.Text.Json;
using Configurator.Core.Documents.Monitoring;
using Configurator.Core.Tests.Support;
using Json.Schema;

namespace Configurator.Core.Tests.Documents;

/// <summary>Every monitoring list of the demonstration catalogue is what the schema says, and the schema refuses others.</summary>
public class MonitoringSchemaTests
{
    private static readonly JsonSchema Schema =
        JsonSchema.FromText(MonitoringSchema.Text, new BuildOptions { SchemaRegistry = new() });

    [Fact]
    public void Every_file_follows_the_schema()
    {
        var files = DemoCatalogue.Documents.TextFiles.Where(file => file.Path.EndsWith("/monitoring.json", StringComparison.Ordinal)).ToList();
        Assert.Equal(DemoCatalogue.Engineered.Configurations.Length, files.Count);
        Assert.All(files, file => Assert.True(Takes(file.Text), file.Path));
    }

    [Theory]
    [InlineData("\"kind\": \"process-value\"", "\"kind\": \"process\"")]
    [InlineData("\"port\": 1,", "\"port\": 0,")]
    [InlineData("\"events\"", "\"happenings\"")]
    public void A_file_that_is_otherwise_is_refused(string was, string now)
    {
        var text = DemoCatalogue.Documents.TextFiles.First(file => file.Path.EndsWith("/monitoring.json", StringComparison.Ordinal)).Text;
        Assert.Contains(was, text, StringComparison.Ordinal);
        Assert.False(Takes(text.Replace(was, now, StringComparison.Ordinal)));
    }

    private static bool Takes(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
