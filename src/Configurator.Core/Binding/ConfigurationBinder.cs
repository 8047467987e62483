using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds published configurations.</summary>
internal static class ConfigurationBinder
{
    public static ImmutableArray<PublishedConfiguration> Bind(
        IEnumerable<DefinitionFile> files,
        Names<Machine> machines,
        Names<Option> options,
        Names<Recipe> recipes,
        ICollection<Diagnostic> report
    )
    {
        var read = files
            .Select(file => Read(file, machines, options, recipes, report))
            .OfType<PublishedConfiguration>();
        var named = Unique.By("configuration", read, configuration => configuration.Id.Select(id => id.Value), report);
        return Unique.By("document number", named, configuration => configuration.Document, report);
    }

    private static PublishedConfiguration? Read(
        DefinitionFile file,
        Names<Machine> machines,
        Names<Option> options,
        Names<Recipe> recipes,
        ICollection<Diagnostic> report
    )
    {
        var f = file.Fields;
        if (
            f.One<string>("machine") is not { } machineName
            || machines.Find(machineName, report) is not { } machine
            || f.Value<Text>("title") is not { } title
            || f.One<string>("document") is not { } document
            || f.Value<string>("revision") is not { } revision
        )
        {
            return null;
        }

        var lines = new OrderBinder(machine, options, report).Read(f);
        ImmutableArray<Located<RecipeId>> run =
        [
            .. f.Many<string>("recipes")
                .Where(name => recipes.Find(name, report) is not null)
                .Select(name => name.Select(id => new RecipeId(id))),
        ];
        return lines is null || !f.AreSound("accepted")
            ? null
            : new(file.Id.Select(id => new ConfigurationId(id)), machine.Id.Value, title, document, revision)
            {
                Options = lines.Options,
                Quantities = lines.Quantities,
                Recipes = run,
                Released = f.Value<Fields>("released") is { } release ? ReadRelease(release) : null,
                History = [.. f.Records("history").Select(ReadStep).OfType<RevisionStep>()],
                Accepted = AcceptedBinder.Bind(f.Records("accepted")),
            };
    }

    public static Release? ReadRelease(Fields f) =>
        f.Value<Text>("by") is { } by && f.One<DateOnly>("on") is { } on ? new(by, on.Value) : null;

    private static RevisionStep? ReadStep(Fields f) =>
        f.Value<string>("revision") is { } revision
        && f.One<DateOnly>("on") is { } on
        && f.Value<Text>("by") is { } by
        && f.Value<Text>("change") is { } change
            ? new(revision, on.Value, by, change)
            : null;
}
