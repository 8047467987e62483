using System.Text;

namespace Configurator.Core.Documents.Picking;

/// <summary>
/// Whole numbers as text, small ones short: five bits a letter, the lowest first, and a sixth that says whether more
/// follow. The letters are those of RFC 4648, section 5, so nothing has to be escaped anywhere.
/// </summary>
internal sealed class NumberText
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    private const int Bits = 5;
    private const uint More = 1u << Bits;

    private readonly StringBuilder _text = new();

    public void Add(uint number)
    {
        for (; number >= More; number >>= Bits)
        {
            _text.Append(Letters[(int)(number & (More - 1) | More)]);
        }

        _text.Append(Letters[(int)number]);
    }

    public void Add(int number) => Add(checked((uint)number));

    /// <summary>A set of values in two halves, for readers whose whole numbers end at 32 bits.</summary>
    public void AddSet(ulong values)
    {
        Add((uint)(values & uint.MaxValue));
        Add((uint)(values >> 32));
    }

    public override string ToString() => _text.ToString();
}
