using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds recipes: the fits and parameters they name exist, and the values have their form.</summary>
internal static class RecipeBinder
{
    public static Names<Recipe> Bind(
        IEnumerable<DefinitionFile> files,
        Names<Machine> machines,
        FaultyNames faulty,
        ICollection<Diagnostic> report
    )
    {
        var read = files.Select(file => (file.Id, Recipe: Read(file, machines, report))).ToList();
        var recipes = Unique.By(
            "recipe",
            read.Select(entry => entry.Recipe).OfType<Recipe>(),
            recipe => recipe.Id.Select(id => id.Value),
            report
        );
        return Names<Recipe>.Of(
            "recipe",
            recipes,
            recipe => recipe.Id.Value.Value,
            faulty.Of("recipe").Concat(read.Where(entry => entry.Recipe is null).Select(entry => entry.Id.Value))
        );
    }

    private static Recipe? Read(DefinitionFile file, Names<Machine> machines, ICollection<Diagnostic> report)
    {
        var f = file.Fields;
        if (
            f.One<string>("machine") is not { } machineName
            || machines.Find(machineName, report) is not { } machine
            || f.Value<Text>("title") is not { } title
        )
        {
            return null;
        }

        return new(file.Id.Select(id => new RecipeId(id)), machine.Id.Value, title)
        {
            Product = f.Value<Text>("product") ?? Text.Empty,
            Film = f.Value<Text>("film") ?? Text.Empty,
            Settings =
            [
                .. f.Table<ImmutableArray<KeyValuePair<Located<string>, Located<object>>>>("settings")
                    .Select(entry => ReadFit(entry.Key, entry.Value.Value, machine, report))
                    .OfType<FitSettings>(),
            ],
        };
    }

    private static FitSettings? ReadFit(
        Located<string> key,
        ImmutableArray<KeyValuePair<Located<string>, Located<object>>> values,
        Machine machine,
        ICollection<Diagnostic> report
    )
    {
        var parts = key.Value.Split('/');
        var ordinal = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : (int?)null;
        if (Find(machine, key, new(parts[0]), ordinal, report) is not { } instance)
        {
            return null;
        }

        if (!instance.Device.IsWhole)
        {
            return null;
        }

        var parameters = Names<Parameter>.Of(
            $"parameter of `{instance.Device.Id.Value}`",
            instance.Device.Parameters,
            parameter => parameter.Name.Value
        );
        var read = ImmutableSortedDictionary.CreateBuilder<string, SettingValue>(StringComparer.Ordinal);
        foreach (var (name, written) in values)
        {
            if (
                parameters.Find(name, report) is { } parameter
                && ParameterBinder.Value(parameter, written.Select(value => (string)value), report) is { } value
            )
            {
                read[name.Value] = value;
            }
        }

        return new(key.Select(_ => new FitName(parts[0])), ordinal, read.ToImmutable());
    }

    /// <summary>The instance meant, or the first one of its fit; a fit that is not there may be one of a faulty
    /// option.</summary>
    private static FitInstance? Find(
        Machine machine,
        Located<string> key,
        FitName fit,
        int? ordinal,
        ICollection<Diagnostic> report
    )
    {
        var found = machine.Instances.FirstOrDefault(instance =>
            instance.Key.Fit == fit && instance.Key.Ordinal == (ordinal ?? 1)
        );
        if (found is null && machine.FaultyOptions.IsEmpty)
        {
            var known = machine.Instances.Select(instance =>
                ordinal is null
                    ? instance.Key.Fit.Value
                    : FormattableString.Invariant($"{instance.Key.Fit}/{instance.Key.Ordinal}")
            );
            report.Add(BindingDiagnostics.NotFound("fit", key, known.Distinct(StringComparer.Ordinal)));
        }

        return found;
    }
}
