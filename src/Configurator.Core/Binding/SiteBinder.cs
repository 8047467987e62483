using Configurator.Core.Model;

namespace Configurator.Core.Binding;

/// <summary>Binds the settings of the site; without a file the defaults hold.</summary>
internal static class SiteBinder
{
    public static SiteSettings Bind(IEnumerable<DefinitionFile> files)
    {
        if (files.FirstOrDefault()?.Fields is not { } f)
        {
            return SiteSettings.Default;
        }

        var languages = f.Many<string>("languages");
        return new(
            f.Value<Text>("title") ?? SiteSettings.Default.Title,
            languages.IsEmpty
                ? SiteSettings.Default.Languages
                : [.. languages.Select(language => language.Value).Distinct(StringComparer.Ordinal)],
            f.Value("designations", SiteSettings.Default.Designations),
            f.Value("units", SiteSettings.Default.Units)
        )
        {
            BaseAddress = f.Value<string>("base-address"),
        };
    }
}
