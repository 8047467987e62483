using System.Text.Json;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;

namespace Configurator.Core.Tests.Diagnostics.Printing;

public class DiagnosticJsonTests
{
    [Fact]
    public void It_holds_the_counts_and_every_field_of_a_diagnostic() => Assert.Equal(
        """
        {
          "counts": {
            "machines": 1,
            "options": 5
          },
          "diagnostics": [
            {
              "code": "CFG2003",
              "severity": "error",
              "title": "Unknown name",
              "message": "there is no option \u0060snap\u0060",
              "path": "options/lids/top-film.yaml",
              "line": 2,
              "column": 12,
              "length": 4,
              "notes": [
                {
                  "message": "this one was meant",
                  "path": "options/lids/snap-lid.yaml",
                  "line": 1,
                  "column": 9,
                  "length": 8
                }
              ],
              "fix": {
                "message": "replace it",
                "replacement": "snap-lid"
              }
            }
          ]
        }

        """,
        DiagnosticJson.Of(
            [Samples.Plain() with
            {
                Notes = [new("this one was meant", new("options/lids/snap-lid.yaml", 1, 9, 8))],
                Fix = new("replace it", new(Samples.Path, 2, 12, 4), "snap-lid"),
            }],
            [new("machines", 1), new("options", 5)]));

    [Fact]
    public void Without_a_fix_there_is_no_fix() => Assert.False(Parse(Samples.Plain()).TryGetProperty("fix", out _));

    [Fact]
    public void A_fix_without_a_replacement_says_only_what_to_do()
    {
        var fix = Parse(Samples.Plain() with { Fix = new("define it") }).GetProperty("fix");
        Assert.Equal("define it", fix.GetProperty("message").GetString());
        Assert.False(fix.TryGetProperty("replacement", out _));
    }

    [Fact]
    public void Nothing_found_is_an_empty_list() =>
        Assert.Empty(ParseAll().EnumerateArray());

    [Fact]
    public void Diagnostics_come_by_place() => Assert.Equal(
        ["a", "b", "c"],
        ParseAll(At("c"), At("a"), At("b")).EnumerateArray()
            .Select(diagnostic => diagnostic.GetProperty("path").GetString()));

    [Theory]
    [MemberData(nameof(Samples.Hostile), MemberType = typeof(Samples))]
    public void A_text_comes_back_as_it_was_and_is_harmless_on_the_way(string hostile)
    {
        var printed = DiagnosticJson.Of([Samples.Full(hostile)], []);
        Assert.DoesNotContain(printed, c => c != '\n' && (char.IsControl(c) || c > '~'));
        Assert.DoesNotContain("##", printed, StringComparison.Ordinal);
        Assert.DoesNotContain(printed.Split('\n'), Samples.OpensCommand);
        Assert.Equal(hostile, Parse(Samples.Full(hostile)).GetProperty("message").GetString());
        Assert.Equal(hostile, Parse(Samples.Full(hostile)).GetProperty("fix").GetProperty("replacement").GetString());
    }

    private static Diagnostic At(string path) => new(Samples.UnknownName, "x", new(path, 1, 1, 1));

    private static JsonElement Parse(Diagnostic diagnostic) => ParseAll(diagnostic)[0];

    private static JsonElement ParseAll(params Diagnostic[] diagnostics) =>
        JsonDocument.Parse(DiagnosticJson.Of(diagnostics, [])).RootElement.GetProperty("diagnostics");
}
