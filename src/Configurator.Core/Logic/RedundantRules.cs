using System.Collections.Immutable;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Searching;

namespace Configurator.Core.Logic;

/// <summary>Rules that follow from the others. Of several that follow from each other the last one is named.</summary>
internal static class RedundantRules
{
    /// <summary>Of the search's work; a few seconds at most. Counted, so that every machine ends at the same
    /// rule.</summary>
    private const long WorkMax = 20_000_000;

    /// <returns>Those found, and how many rules were not tried.</returns>
    public static (ImmutableArray<RuleProof> Found, int Untried) Of(OrderLogic logic)
    {
        var solver = logic.Search.Solver;
        var limit = solver.WorkMax;
        solver.WorkMax = Math.Min(limit, solver.Work + WorkMax);
        var found = ImmutableArray.CreateBuilder<RuleProof>();
        var tried = 0;
        try
        {
            foreach (var proof in Try(logic))
            {
                tried++;
                if (proof is not null)
                {
                    found.Add(proof);
                }
            }
        }
        catch (TooEntangledException) when (solver.Work <= limit)
        {
            return (found.ToImmutable(), logic.Rules.Length - tried);
        }
        finally
        {
            solver.WorkMax = limit;
        }

        return (found.ToImmutable(), 0);
    }

    /// <summary>Each rule from the last to the first: its proof where it follows from those that are left.</summary>
    private static IEnumerable<RuleProof?> Try(OrderLogic logic)
    {
        var search = logic.Search;
        var left = Enumerable.Range(0, logic.Rules.Length).Select(search.SwitchOf).ToList();
        var rules = left.Select((member, rule) => (member, rule)).ToDictionary(pair => pair.member, pair => pair.rule);
        var byRule = search.Options.Formula.Clauses.Where(clause => clause.Rule >= 0).ToLookup(clause => clause.Rule);
        for (var rule = logic.Rules.Length - 1; rule >= 0; rule--)
        {
            var own = search.SwitchOf(rule);
            var contrary = Contrary(search, byRule[rule]);
            search.Solver.Spend(left.Count);
            if (search.Solver.Solve([.. left.Where(member => member != own), contrary]))
            {
                yield return null;
                continue;
            }

            left.Remove(own);
            var core = SmallestCore.Minimal(search.Solver, [.. search.Solver.Core]);
            yield return new(
                logic.Rules[rule],
                [
                    .. core.Where(member => member != contrary)
                        .Select(member => logic.Rules[rules[member]])
                        .OrderBy(other => other.Span),
                ]
            );
        }
    }

    /// <summary>A switch under which some clause of the rule is broken.</summary>
    private static int Contrary(RuleSearch search, IEnumerable<Clause> clauses)
    {
        var contrary = search.Solver.NewVariable();
        var broken = new List<int> { RuleSearch.Negative(contrary) };
        foreach (var clause in clauses)
        {
            var isBroken = search.Solver.NewVariable();
            broken.Add(RuleSearch.Positive(isBroken));
            foreach (var literal in clause.Literals.SelectMany(search.Any))
            {
                search.Solver.Add(RuleSearch.Negative(isBroken), literal ^ 1);
            }
        }

        search.Solver.Add([.. broken]);
        return RuleSearch.Positive(contrary);
    }
}
