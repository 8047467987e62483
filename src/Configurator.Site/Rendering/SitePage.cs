using System.Globalization;
using System.Runtime.CompilerServices;
using Configurator.Core.Documents.Blocks;
using Microsoft.AspNetCore.Html;
using RazorLight;
using RazorLight.Internal.Buffering;
using RazorLight.Razor;
using RazorLight.Text;

namespace Configurator.Site.Rendering;

/// <summary>What every template inherits. One instance makes one page.</summary>
public abstract class SitePage<TModel> : TemplatePage<TModel>
{
    private const string Encoded = "text is always encoded; a sanitised fragment is a SafeHtml";

    [Obsolete(Encoded, error: true)]
    public new bool DisableEncoding => false;

    [Obsolete(Encoded, error: true)]
    public new IRawString Raw(string rawString) => throw new NotSupportedException(Encoded);

    /// <summary>Writes a sanitised fragment as it is; <c>@Model.Notes</c> alone does the same.</summary>
    public SafeHtml Raw(SafeHtml html) => html;

    /// <summary>
    /// The prose of a definition as a sanitised fragment; what cannot be shown of it is reported elsewhere.
    /// </summary>
    public SafeHtml Prose(Passage passage) => Renderer.ProseOf(passage).Value;

    /// <summary>Writes another template here: <c>@await IncludeAsync("shared/_Table.cshtml", table)</c>.</summary>
    /// <param name="key">The other template's path below <c>site-templates</c>.</param>
    /// <param name="model">What the other template formats.</param>
    /// <param name="path">Filled in by the compiler.</param>
    /// <param name="line">Filled in by the compiler.</param>
    public async Task<IHtmlContent> IncludeAsync(
        string key,
        object? model,
        [CallerFilePath] string path = "",
        [CallerLineNumber] int line = 0
    )
    {
        await ((SitePageContext)PageContext).IncludeAsync(key, model, path, line);
        return HtmlString.Empty;
    }

    public override void SetModel(object? model) =>
        Model = model is TModel typed
            ? typed
            : throw new TemplateFailure(RenderingDiagnostics.WrongModel(Key, typeof(TModel), model?.GetType()));

    public override void Write(string? value) => WriteLiteral(HtmlText.Encode(value));

    public override void Write(object? value)
    {
        switch (value)
        {
            case SafeHtml safe:
                WriteLiteral(safe.Html);
                break;
            case IRawString:
            case IHtmlContent when !IsOurs(value):
                throw new NotSupportedException(Encoded);
            case IFormattable formattable:
                Write(formattable.ToString(format: null, CultureInfo.InvariantCulture));
                break;
            default:
                base.Write(value);
                break;
        }
    }

    /// <summary>The body of a layout, a piece of template as a value, and nothing.</summary>
    private static bool IsOurs(object value) =>
        value is ViewBuffer or RazorLightHelperResult || ReferenceEquals(value, HtmlString.Empty);
}
