using System.Collections.Immutable;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>What is left of every option, by one search for each number not yet seen in an assignment.</summary>
internal sealed class StatesBySearch(RuleSearch search)
{
    public ImmutableSortedDictionary<OptionId, OptionState> Of(IReadOnlyCollection<int> order)
    {
        int[] assumed = [.. search.AllRules, .. order];
        var seen = search.Options.Variables.Keys.ToDictionary(option => option, _ => new SortedSet<int>());
        if (search.Solver.Solve(assumed))
        {
            Note(seen);
            foreach (var (option, variable) in search.Options.Variables)
            {
                foreach (var count in variable.Counts.Distinct().Where(count => !seen[option].Contains(count)))
                {
                    if (search.Solver.Solve([.. assumed, search.NewSwitch(variable.Literal(taken => taken == count))]))
                    {
                        Note(seen);
                    }
                }
            }
        }

        return seen.ToImmutableSortedDictionary(option => option.Key, option => new OptionState([.. option.Value]));
    }

    /// <summary>Every number in the assignment found is possible.</summary>
    private void Note(Dictionary<OptionId, SortedSet<int>> seen)
    {
        foreach (var (option, variable) in search.Options.Variables)
        {
            seen[option].Add(variable.Counts[search.ValueOf(variable.Variable)]);
        }
    }
}
