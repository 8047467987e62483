using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Configurator.Planning;

/// <summary>
/// The constraint model of a port plan. It has no port numbers: a fit goes to a group of equal ports and, within it, to
/// one set of fits that can take turns; each such set gets as many ports as it needs. Homes so far are ports of their
/// own.
/// </summary>
internal sealed class PlanModel
{
    private readonly PlanProblem _problem;
    private readonly ImmutableArray<ImmutableArray<int>> _cliques;
    private readonly List<(PlanItem Item, int Clique, PlanGroup Group, BoolVar Is)> _places = [];
    private readonly List<(PlanItem Item, OldPort Port, BoolVar Is)> _joins = [];
    private readonly SortedDictionary<int, BoolVar> _keeps = [];
    private readonly Dictionary<(int Clique, int Group), IntVar> _columns = [];
    private readonly Dictionary<(int Item, int Group), List<BoolVar>> _at = [];
    private readonly List<IntVar> _pairs = [];
    private readonly List<BoolVar> _unplaced = [];
    private readonly List<IntVar> _over = [];

    /// <param name="mayMove">Homes so far may be given up.</param>
    /// <param name="withCurrent">Masters and hubs keep their limits in every order, by a bound that is safe.</param>
    public PlanModel(PlanProblem problem, bool mayMove, bool withCurrent)
    {
        (_problem, _cliques) = (problem, Cliques.Maximal(problem.Facts.Together));
        OldPorts = OldPort.Of(problem);
        AddChoices(mayMove);
        AddColumns();
        AddOldPorts();
        if (mayMove)
        {
            PartThoseWhoMeet();
        }

        AddCarriers(mayMove);
        if (withCurrent)
        {
            new CurrentBound(Model, problem, mayMove, At).Add();
        }
    }

    public CpModel Model { get; } = new();

    public ImmutableArray<OldPort> OldPorts { get; }

    /// <summary>For each extension: is it given any home?</summary>
    public List<BoolVar> Used { get; } = [];

    public LinearExpr UnplacedCount => LinearExpr.Sum(_unplaced);

    public LinearExpr SpareTaken => LinearExpr.Sum(_over);

    public LinearExpr UsedCount => LinearExpr.Sum(Used);

    public LinearExpr Moves => LinearExpr.Sum(_keeps.Values.Select(keep => (LinearExpr)keep.NotAsExpr()));

    public LinearExpr PortCount => LinearExpr.Sum([.. _columns.Values, .. OldPorts.Select(port => port.IsKept!)]);

    public LinearExpr CableLength =>
        LinearExpr.Sum([
            .. _places.Select(place => place.Is * _problem.Cable[place.Item.Index, place.Group.Index]!.Value),
            .. _joins.Select(join => join.Is * _problem.Cable[join.Item.Index, join.Port.Group.Index]!.Value),
            .. _keeps.Select(keep => keep.Value * CableAtHome(_problem.Items[keep.Key])),
            .. _pairs.Select(pairs => pairs * _problem.SplitterCable),
        ]);

    /// <summary>What is true where the item lives in the group.</summary>
    public IReadOnlyList<BoolVar> At(PlanItem item, PlanGroup group) =>
        _at.TryGetValue((item.Index, group.Index), out var literals) ? literals : [];

    /// <summary>The next solution is looked for near this one.</summary>
    public void Hint(CpSolver solver)
    {
        foreach (var literal in _at.Values.SelectMany(literals => literals).Concat(_unplaced).Concat(Used))
        {
            Model.AddHint(literal, solver.BooleanValue(literal));
        }

        foreach (var number in _columns.Values.Concat(_pairs).Concat(_over))
        {
            Model.AddHint(number, solver.Value(number));
        }
    }

    public PlanDraft Read(CpSolver solver) =>
        new(
            [.. _problem.Items.Where(item => solver.BooleanValue(_unplaced[item.Index]))],
            [.. _keeps.Where(keep => solver.BooleanValue(keep.Value)).Select(keep => _problem.Items[keep.Key])],
            [
                .. _joins
                    .Where(join => solver.BooleanValue(join.Is))
                    .Select(join => new JoinedPort(join.Item, join.Port)),
            ],
            [
                .. _places
                    .Where(place => solver.BooleanValue(place.Is))
                    .GroupBy(place => (place.Clique, place.Group))
                    .Select(set => new SharedPorts(
                        set.Key.Group,
                        [.. set.Select(place => place.Item)],
                        (int)solver.Value(_columns[(set.Key.Clique, set.Key.Group.Index)])
                    )),
            ]
        );

    private void AddChoices(bool mayMove)
    {
        foreach (var item in _problem.Items)
        {
            var unplaced = Model.NewBoolVar("");
            _unplaced.Add(unplaced);
            List<ILiteral> ways = [unplaced];
            if (item.Old is not null)
            {
                _keeps[item.Index] = NewAt(item, _problem.GroupOf(item.Old.Value)!);
                ways.Add(_keeps[item.Index]);
                if (!mayMove)
                {
                    Model.Add(_keeps[item.Index] == 1);
                }
                else if (!_problem.CanLive(item, _problem.GroupOf(item.Old.Value)!))
                {
                    Model.Add(_keeps[item.Index] == 0);
                }
            }

            if (item.Old is null || mayMove)
            {
                ways.AddRange(Places(item));
                ways.AddRange(Joins(item));
            }

            Model.AddExactlyOne(ways);
        }
    }

    private BoolVar NewAt(PlanItem item, PlanGroup group)
    {
        var literal = Model.NewBoolVar("");
        if (!_at.TryGetValue((item.Index, group.Index), out var literals))
        {
            _at[(item.Index, group.Index)] = literals = [];
        }

        literals.Add(literal);
        return literal;
    }

    private IEnumerable<BoolVar> Places(PlanItem item)
    {
        foreach (var group in _problem.GroupsOf(item))
        {
            for (var clique = 0; clique < _cliques.Length; clique++)
            {
                if (_cliques[clique].Contains(item.Condition))
                {
                    var place = NewAt(item, group);
                    _places.Add((item, clique, group, place));
                    yield return place;
                }
            }
        }
    }

    private IEnumerable<BoolVar> Joins(PlanItem item)
    {
        foreach (var port in OldPorts)
        {
            if (
                _problem.CanLive(item, port.Group)
                && !port.Tenants.Contains(item)
                && port.Tenants.Any(tenant => !_problem.CanMeet(tenant, item))
            )
            {
                var join = NewAt(item, port.Group);
                _joins.Add((item, port, join));
                yield return join;
            }
        }
    }

    /// <summary>A set of fits that take turns needs as many ports as its largest share under one condition; two plain
    /// signals of that share may go through a splitter.</summary>
    private void AddColumns()
    {
        foreach (var set in _places.GroupBy(place => (place.Clique, place.Group)))
        {
            var group = set.Key.Group;
            var columns = Model.NewIntVar(0, group.Ports.Length, "");
            _columns[(set.Key.Clique, group.Index)] = columns;
            foreach (var share in set.GroupBy(place => place.Item.Condition))
            {
                List<LinearExpr> needed = [.. share.Select(place => (LinearExpr)place.Is)];
                needed.AddRange(Pairs(share).Select(pairs => pairs * -1));
                Model.Add(LinearExpr.Sum(needed) <= columns);
            }
        }
    }

    private IEnumerable<IntVar> Pairs(IEnumerable<(PlanItem Item, int Clique, PlanGroup Group, BoolVar Is)> share)
    {
        foreach (
            var plain in share
                .Where(place => _problem.CanPair(place.Item, place.Group))
                .GroupBy(place => place.Item.Key.Source, StringComparer.Ordinal)
        )
        {
            if (plain.Count() > 1)
            {
                var pairs = Model.NewIntVar(0, plain.Count() / 2, "");
                _pairs.Add(pairs);
                Model.Add(pairs * 2 <= LinearExpr.Sum(plain.Select(place => place.Is)));
                yield return pairs;
            }
        }
    }

    private void AddOldPorts()
    {
        foreach (var port in OldPorts)
        {
            port.IsKept = Model.NewBoolVar("");
            var tenants = port.Tenants.Select(tenant => (Item: tenant, Is: _keeps[tenant.Index])).ToList();
            var joining = _joins.Where(join => join.Port == port).Select(join => (join.Item, join.Is)).ToList();
            foreach (var (_, literal) in tenants.Concat(joining))
            {
                Model.AddImplication(literal, port.IsKept);
            }

            // Nobody joins a port that no tenant keeps: it is a free port like any other.
            Model.Add(LinearExpr.Sum(tenants.Select(tenant => tenant.Is)) >= port.IsKept);
            foreach (var (item, literal) in joining)
            {
                foreach (
                    var (other, otherLiteral) in tenants.Concat(joining.Where(other => other.Item.Index < item.Index))
                )
                {
                    if (_problem.CanMeet(item, other))
                    {
                        Model.AddAtMostOne([literal, otherLiteral]);
                    }
                }
            }
        }
    }

    /// <summary>What was one too many at a port does not stay there.</summary>
    private void PartThoseWhoMeet()
    {
        foreach (var port in OldPorts)
        {
            foreach (var tenant in port.Tenants)
            {
                foreach (var other in port.Tenants.Where(other => other.Index < tenant.Index))
                {
                    if (_problem.CanMeet(tenant, other) && !_problem.IsPair(tenant, other))
                    {
                        Model.AddAtMostOne([_keeps[tenant.Index], _keeps[other.Index]]);
                    }
                }
            }
        }
    }

    /// <param name="mayMove">Homes so far may be given up; else one at a hub stays, wherever the hub itself goes.</param>
    private void AddCarriers(bool mayMove)
    {
        foreach (var group in _problem.Groups)
        {
            Model.Add(LinearExpr.Sum(PortsGiven([group])) <= group.Ports.Length);
        }

        Used.AddRange(Enumerable.Range(0, _problem.Extensions).Select(_ => Model.NewBoolVar("")));
        foreach (var carrier in _problem.Carriers)
        {
            var groups = _problem.Groups.Where(group => group.Carrier == carrier.Index).ToList();
            var over = Model.NewIntVar(0, carrier.Spare, "");
            _over.Add(over);
            Model.Add(LinearExpr.Sum(PortsGiven(groups)) <= carrier.Ports - carrier.Spare + over);
            if (carrier.Extension is { } extension)
            {
                Model.Add(LinearExpr.Sum(PortsGiven(groups)) <= carrier.Ports * Used[extension]);
                Imply(_problem.Items, groups, Used[extension]);
            }

            if (carrier.Hub is { } hub)
            {
                var placed = _problem.Items.Where(item => mayMove || item.Old is null);
                Imply(placed, groups, _unplaced[hub].Not());
            }
        }
    }

    private void Imply(IEnumerable<PlanItem> items, List<PlanGroup> groups, ILiteral consequence)
    {
        foreach (var literal in items.SelectMany(item => groups.SelectMany(group => At(item, group))))
        {
            Model.AddImplication(literal, consequence);
        }
    }

    private IEnumerable<LinearExpr> PortsGiven(IReadOnlyCollection<PlanGroup> groups) =>
        _columns
            .Where(columns => groups.Any(group => group.Index == columns.Key.Group))
            .Select(columns => (LinearExpr)columns.Value)
            .Concat(OldPorts.Where(port => groups.Contains(port.Group)).Select(port => (LinearExpr)port.IsKept!));

    private long CableAtHome(PlanItem item) =>
        (_problem.GroupOf(item.Old!.Value) is { } group ? _problem.Cable[item.Index, group.Index] ?? 0 : 0)
        + (item.Old!.Value.IsPinTwo ? _problem.SplitterCable : 0);
}
