namespace Configurator.Core.Logic.Searching;

/// <summary>Variables by activity, the busiest first; ties go to the lower number.</summary>
internal sealed class ActivityQueue(List<double> activity)
{
    private readonly List<int> _heap = [];
    private readonly List<int> _position = [];

    public void Add(int variable)
    {
        while (_position.Count <= variable)
        {
            _position.Add(-1);
        }

        if (_position[variable] < 0)
        {
            _position[variable] = _heap.Count;
            _heap.Add(variable);
            Up(_heap.Count - 1);
        }
    }

    /// <summary>Its activity has grown.</summary>
    public void Raised(int variable)
    {
        if (_position[variable] >= 0)
        {
            Up(_position[variable]);
        }
    }

    /// <summary>Takes variables out until one is wanted; -1 where none is.</summary>
    public int Next(Func<int, bool> isWanted)
    {
        while (_heap.Count > 0)
        {
            var variable = _heap[0];
            Swap(0, _heap.Count - 1);
            _heap.RemoveAt(_heap.Count - 1);
            _position[variable] = -1;
            Down(0);
            if (isWanted(variable))
            {
                return variable;
            }
        }

        return -1;
    }

    private bool IsBefore(int left, int right) =>
        activity[left] != activity[right] ? activity[left] > activity[right] : left < right;

    private void Up(int index)
    {
        while (index > 0 && IsBefore(_heap[index], _heap[(index - 1) / 2]))
        {
            Swap(index, (index - 1) / 2);
            index = (index - 1) / 2;
        }
    }

    private void Down(int index)
    {
        while (true)
        {
            var best = index;
            for (var child = (2 * index) + 1; child <= (2 * index) + 2 && child < _heap.Count; child++)
            {
                best = IsBefore(_heap[child], _heap[best]) ? child : best;
            }

            if (best == index)
            {
                return;
            }

            Swap(index, best);
            index = best;
        }
    }

    private void Swap(int left, int right)
    {
        (_heap[left], _heap[right]) = (_heap[right], _heap[left]);
        _position[_heap[left]] = left;
        _position[_heap[right]] = right;
    }
}
