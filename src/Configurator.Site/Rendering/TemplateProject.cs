using System.Collections.Immutable;
using Configurator.Core.Sources;
using RazorLight.Razor;

namespace Configurator.Site.Rendering;

/// <summary>The template set as the template engine wants to see it. Nothing outside the set can be reached.</summary>
internal sealed class TemplateProject(TemplateSet templates) : RazorLightProject
{
    private readonly Lazy<ImmutableArray<TemplateCall>> _calls = new(() =>
        [.. templates.Templates.Values.SelectMany(TemplateCall.In)]
    );

    public IEnumerable<string> PageKeys => templates.Templates.Keys.Where(key => !TemplateKey.IsImports(key));

    /// <summary>Texts that are part of other templates and are not compiled for themselves.</summary>
    public IEnumerable<SourceText> ImportTexts =>
        templates.Templates.Where(it => TemplateKey.IsImports(it.Key)).Select(it => it.Value);

    /// <summary>Every place where a template names another one.</summary>
    public ImmutableArray<TemplateCall> Calls => _calls.Value;

    public bool Has(string key) => Item(key).Exists;

    public TemplateItem Item(string key) => new(key, TemplateKey.IsSound(key) ? templates.Find(key) : null);

    /// <summary>Where somebody first names a template.</summary>
    public SourceSpan? PlaceOf(string key) => Calls.FirstOrDefault(call => call.Key == key)?.Span;

    public SourceText? Text(string path) => templates.Find(TemplateKey.OfPath(path));

    /// <summary>What is written on a line of a template, for places that are known by line alone.</summary>
    public SourceSpan LineOf(string path, int line)
    {
        var text = Text(path)?.Line(line) ?? "";
        var written = text.Trim();
        return new(path, line, text.Length - text.TrimStart().Length + 1, written.Length);
    }

    /// <summary>Outermost first: what stands nearer to the template wins.</summary>
    public ImmutableArray<SourceText> Imports(string key) =>
        [.. TemplateKey.ImportsOf(key).Select(templates.Find).OfType<SourceText>()];

    public override Task<RazorLightProjectItem> GetItemAsync(string templateKey) =>
        Task.FromResult<RazorLightProjectItem>(Item(templateKey));

    public override Task<IEnumerable<RazorLightProjectItem>> GetImportsAsync(string templateKey) =>
        Task.FromResult(
            TemplateKey.ImportsOf(templateKey).Select(Item).Where(item => item.Exists).Cast<RazorLightProjectItem>()
        );
}
