namespace Configurator.Core.Engineering;

/// <summary>How sure a reference value is. Pages say so wherever one is used that is not corroborated.</summary>
public enum Basis
{
    /// <summary>Seen in a public source, or reproduced by arithmetic from published numbers.</summary>
    Corroborated,

    /// <summary>A habit of the trade without a source.</summary>
    CommonPractice,

    /// <summary>Not checked against a text.</summary>
    FromMemory,
}
