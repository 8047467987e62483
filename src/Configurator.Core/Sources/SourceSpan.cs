namespace Configurator.Core.Sources;

/// <summary>A run of characters on one line. Line and column count from 1, as editors do.</summary>
/// <param name="Path">Relative to the catalogue's folder, with forward slashes.</param>
/// <param name="Length">Characters (UTF-16); 0 marks a place between two characters.</param>
public readonly record struct SourceSpan(string Path, int Line, int Column, int Length) : IComparable<SourceSpan>
{
    /// <summary>The start of a file: for what concerns all of it.</summary>
    public static SourceSpan FileStart(string path) => new(path, 1, 1, 0);

    /// <summary>The same place, said from a folder above the catalogue's.</summary>
    /// <param name="folder">The catalogue's folder, with forward slashes; empty where it is that folder itself.</param>
    public SourceSpan Below(string folder) => folder.Length == 0 ? this : this with { Path = $"{folder}/{Path}" };

    public int CompareTo(SourceSpan other)
    {
        var byPath = string.CompareOrdinal(Path, other.Path);
        if (byPath != 0)
        {
            return byPath;
        }

        return Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);
    }

    public override string ToString() => FormattableString.Invariant($"{Path}({Line},{Column})");

    public static bool operator <(SourceSpan left, SourceSpan right) => left.CompareTo(right) < 0;

    public static bool operator <=(SourceSpan left, SourceSpan right) => left.CompareTo(right) <= 0;

    public static bool operator >(SourceSpan left, SourceSpan right) => left.CompareTo(right) > 0;

    public static bool operator >=(SourceSpan left, SourceSpan right) => left.CompareTo(right) >= 0;
}
