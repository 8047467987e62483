using Configurator.Core.Binding.Shapes;

namespace Configurator.Core.Tests.Binding.Schemas;

/// <summary>Law: a schema takes a value just where the binder's reader does.</summary>
public sealed class AgreementTests
{
    private static readonly Dictionary<Shape, Func<string, bool>> Schemas =
        Judge.Shapes.ToDictionary(shape => shape, Judge.SchemaOf);

    public static TheoryData<string> Values => [.. Samples.Values];

    [Theory]
    [MemberData(nameof(Values))]
    public void Whatever_the_schema_takes_the_reader_takes_and_the_other_way(string value)
    {
        var differing = Judge.Shapes
            .Where(shape => !Difference.IsKnown(value, shape))
            .Where(shape => Schemas[shape](value) != Judge.ReaderTakes(shape, value))
            .Select(shape => shape.Wanted);
        Assert.Empty(differing);
    }

    [Fact]
    public void They_differ_only_where_a_schema_cannot_see_what_was_written() => Assert.All(
        Difference.All,
        known => Assert.Contains(
            Judge.Shapes.Where(known.Concerns),
            shape => Judge.ReaderTakes(shape, known.Value) == known.ReaderTakes
                && Schemas[shape](known.Value) != known.ReaderTakes));

    // Else the law above would say nothing about that shape.
    [Fact]
    public void Every_shape_takes_some_of_the_samples_and_refuses_others() => Assert.All(Judge.Shapes, shape =>
    {
        Assert.Contains(Samples.Values, value => Judge.ReaderTakes(shape, value));
        Assert.Contains(Samples.Values, value => !Judge.ReaderTakes(shape, value));
    });

    [Fact]
    public void Keys_of_tables_are_taken_by_both_or_by_neither()
    {
        foreach (var table in Judge.Shapes.OfType<TableShape>())
        {
            var schema = Judge.SchemaOfKeys(table);
            Assert.All(Samples.Keys, key => Assert.Equal(Judge.ReaderTakesKey(table.Key, key), schema(key)));
        }
    }
}
