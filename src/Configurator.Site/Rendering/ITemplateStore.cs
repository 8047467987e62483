namespace Configurator.Site.Rendering;

/// <summary>Keeps compiled templates from one run to the next. What it gives is executed: it must be private.</summary>
public interface ITemplateStore
{
    /// <summary>What was kept under that name, whatever has become of it since; null where nothing is.</summary>
    byte[]? Load(string name);

    /// <summary>Keeps it, or not: a store that cannot keep anything says nothing.</summary>
    void Save(string name, byte[] bytes);
}
