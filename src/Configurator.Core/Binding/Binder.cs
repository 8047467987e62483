using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Model;

namespace Configurator.Core.Binding;

/// <summary>Second stage: syntax to the model, every name resolved. What is faulty is reported and left out.</summary>
public static class Binder
{
    public static Outcome<Catalogue> Bind(SyntaxSet syntax)
    {
        var report = new List<Diagnostic>();
        ImmutableArray<DefinitionFile> files =
        [
            .. syntax.Definitions.Select(file => DefinitionFile.Read(file, report)).OfType<DefinitionFile>(),
        ];
        var faulty = FaultyNames.Of(syntax, files);
        var notes = NotesBinder.Read(syntax.Notes, report);

        var devices = DeviceBinder.Bind(Of(files, "device"), notes, faulty, report);
        var options = OptionBinder.Bind(Of(files, "option"), notes, faulty, devices, report);
        var machines = MachineBinder.Bind(Of(files, "machine"), devices, options, faulty, report);
        var planned = PortPlanBinder.Bind(Of(files, "port-plan"), machines, faulty, report);
        NotesBinder.CheckOwners(syntax, report);

        var recipes = RecipeBinder.Bind(Of(files, "recipe"), planned, faulty, report);
        var catalogue = new Catalogue(
            SiteBinder.Bind(Of(files, "site")),
            devices.Known.ToImmutableSortedDictionary(entry => new DeviceId(entry.Key), entry => entry.Value),
            options.Known.ToImmutableSortedDictionary(entry => new OptionId(entry.Key), entry => entry.Value),
            planned.Known.ToImmutableSortedDictionary(
                entry => new MachineId(entry.Key),
                entry => WithAbout(entry.Value, syntax)
            )
        )
        {
            Configurations = ConfigurationBinder.Bind(Of(files, "configuration"), planned, options, recipes, report),
            Recipes = [.. recipes.Known.Values],
            AsBuilts = AsBuiltBinder.Bind(Of(files, "as-built"), planned, options, report),
            Templates = syntax.Templates,
            Assets = syntax.Assets,
        };
        return new(
            catalogue,
            [.. report.DistinctBy(diagnostic => (diagnostic.Rule, diagnostic.Message, diagnostic.Span))]
        );
    }

    private static IEnumerable<DefinitionFile> Of(IEnumerable<DefinitionFile> files, string kind) =>
        files.Where(file => file.Kind.Name == kind);

    private static Machine WithAbout(Machine machine, SyntaxSet syntax) =>
        machine with
        {
            About = syntax.Notes.FirstOrDefault(note => note.Path == $"machines/{machine.Id.Value}/about.md"),
        };
}
