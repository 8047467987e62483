using System.Collections.Immutable;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Differences;

/// <summary>Finds the smallest configurations that keep some rules and break others.</summary>
internal sealed class DifferenceSearch
{
    private const int ExamplesMax = 5;

    /// <summary>A search that works more than this is content with the examples it has.</summary>
    private const long WorkMax = 60_000_000;

    /// <summary>Beyond so many options an example is no longer looked for by size.</summary>
    private const int SizeMax = 40;

    private readonly MachineId _machine;
    private readonly RuleModel _broken;
    private readonly RuleSearch _search;
    private readonly List<int> _assumed;

    /// <param name="kept">Options and rules of one side.</param>
    /// <param name="broken">Those of the other.</param>
    public DifferenceSearch(MachineId machine, RuleModel kept, RuleModel broken)
    {
        (_machine, _broken) = (machine, broken);
        var joint = kept with { Rules = [.. kept.Rules, .. broken.Rules] };
        _search = new(FormulaBuilder.Build(joint, groupChoices: false, []), joint.Rules.Length);
        _assumed = [.. Enumerable.Range(0, kept.Rules.Length).Select(_search.SwitchOf)];
        AddContrary(kept.Rules.Length);
    }

    /// <exception cref="TooEntangledException">Not even one could be found with the work allowed.</exception>
    /// <param name="workMax">As the search counts it; null for what a review may take.</param>
    public ImmutableArray<DifferenceExample> Find(long? workMax = null)
    {
        var found = ImmutableArray.CreateBuilder<DifferenceExample>();
        _search.Solver.WorkMax = _search.Solver.Work + (workMax ?? WorkMax);
        try
        {
            FindInto(found);
        }
        catch (TooEntangledException) when (found.Count > 0)
        {
            // Those found are the smallest; how many more there are the counts say.
        }

        return found.ToImmutable();
    }

    private void FindInto(ImmutableArray<DifferenceExample>.Builder found)
    {
        if (!_search.Solver.Solve([.. _assumed]))
        {
            return;
        }

        var counter = new ChangeCounter(_search.Solver, Taken(), Math.Min(SizeMax, _search.Options.Variables.Count));
        for (var size = 0; size <= counter.Most + 1 && found.Count < ExamplesMax; )
        {
            if (_search.Solver.Solve([.. _assumed, .. counter.AtMost(size)]))
            {
                found.Add(Example());
                Bar();
            }
            else
            {
                size++;
            }
        }
    }

    /// <summary>From now on some rule of the other side is broken, or some option is not to be had there in its
    /// number.</summary>
    private void AddContrary(int first)
    {
        var broken = new List<int>();
        foreach (var clause in _search.Options.Formula.Clauses.Where(clause => clause.Rule >= first))
        {
            var isBroken = RuleSearch.Positive(_search.Solver.NewVariable());
            broken.Add(isBroken);
            foreach (var literal in clause.Literals.SelectMany(_search.Any))
            {
                _search.Solver.Add(isBroken ^ 1, literal ^ 1);
            }
        }

        foreach (var (option, variable) in _search.Options.Variables)
        {
            broken.AddRange(_search.Any(variable.Literal(count => !IsOffered(option, count))));
        }

        _search.Solver.Add([.. broken]);
    }

    private bool IsOffered(OptionId option, int count) =>
        count == 0 || _broken.Options.Any(other => other.Id == option && count >= other.From && count <= other.To);

    /// <summary>For each option a literal that is true where it is taken.</summary>
    private List<int> Taken() =>
        [
            .. _search.Options.Variables.Values.Select(variable =>
            {
                var taken = RuleSearch.Positive(_search.Solver.NewVariable());
                foreach (var literal in _search.Any(variable.Literal(count => count > 0)).ToList())
                {
                    _search.Solver.Add(literal ^ 1, taken);
                }

                return taken;
            }),
        ];

    private DifferenceExample Example()
    {
        var configuration = new CompiledRules(_search.Options, null).Read(_machine, _search.ValueOf);
        return new(
            configuration,
            [
                .. configuration.Quantities.Where(taken => !IsOffered(taken.Key, taken.Value)).Select(NotOffered),
                .. _broken.Rules.Where(rule => !rule.Holds(configuration.QuantityOf)),
            ]
        );
    }

    private OrderRule NotOffered(KeyValuePair<OptionId, int> taken) =>
        new(
            RuleKind.Offer,
            _broken.Options.Any(option => option.Id == taken.Key)
                ? FormattableString.Invariant($"`{taken.Key}` is not offered {taken.Value} times")
                : $"`{taken.Key}` is not offered",
            null,
            default
        );

    /// <summary>Never this configuration again.</summary>
    private void Bar() =>
        _search.Solver.Add([
            .. _search
                .Options.Variables.Values.SelectMany(variable =>
                {
                    var now = variable.Counts[_search.ValueOf(variable.Variable)];
                    return _search.Any(variable.Literal(count => count != now));
                })
                .ToList(),
        ]);
}
