namespace Configurator.Core.Logic.Compiling;

/// <summary>A growing array of integers without checks that the inner loop cannot afford.</summary>
internal sealed class IntList
{
    private int[] _items = new int[4];

    public int Count { get; private set; }

    /// <summary>Those in it now; good until the next one is added.</summary>
    public ReadOnlySpan<int> Items => _items.AsSpan(0, Count);

    public int this[int index]
    {
        get => _items[index];
        set => _items[index] = value;
    }

    public void Add(int item)
    {
        if (Count == _items.Length)
        {
            Array.Resize(ref _items, Count * 2);
        }

        _items[Count++] = item;
    }

    public void Truncate(int count) => Count = count;
}
