using System.Text;
using Configurator.Core.Sources;
using RazorLight.Razor;

namespace Configurator.Site.Rendering;

/// <summary>One template in memory, or the fact that there is none under its key.</summary>
internal sealed class TemplateItem(string key, SourceText? text) : RazorLightProjectItem
{
    public override string Key => key;

    public override bool Exists => text is not null;

    public string Text => text?.Text ?? "";

    public override Stream Read() => new MemoryStream(Encoding.UTF8.GetBytes(Text), writable: false);
}
