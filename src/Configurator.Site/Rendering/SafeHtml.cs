namespace Configurator.Site.Rendering;

/// <summary>
/// HTML that was sanitised: the only kind that a template may write as it is. Made by the Markdown stage alone, which a
/// test holds.
/// </summary>
public sealed record SafeHtml
{
    internal SafeHtml(string html) => Html = html;

    public static SafeHtml Empty { get; } = new("");

    public string Html { get; }

    public bool IsEmpty => Html.Length == 0;

    public override string ToString() => Html;
}
