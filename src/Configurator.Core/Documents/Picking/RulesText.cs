using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Documents.Picking;

/// <summary>Compiled rules as short text for the page that picks.</summary>
internal static class RulesText
{
    /// <summary>
    /// Sizes of the variables; leaves as variable and values; nodes as twice their number of children and one more
    /// where all must hold, then how far back each child stands. Each list starts with its length.
    /// </summary>
    public static string Of(Diagram diagram)
    {
        var text = new NumberText();
        AddSizes(text, diagram.Sizes);
        text.Add(diagram.LeafCount);
        for (var leaf = 0; leaf < diagram.LeafCount; leaf++)
        {
            text.Add(diagram.Variable[leaf]);
            text.AddSet(diagram.Values[leaf]);
        }

        text.Add(diagram.NodeCount - diagram.LeafCount);
        for (var node = diagram.LeafCount; node < diagram.NodeCount; node++)
        {
            var children = diagram.ChildrenOf(node);
            text.Add((children.Length * 2) + (diagram.Kinds[node] == NodeKind.All ? 1 : 0));
            foreach (var child in children)
            {
                text.Add(node - child);
            }
        }

        return text.ToString();
    }

    /// <summary>Sizes of the variables; clauses as the number of their rule and one more, 0 where they only define a
    /// variable, then each literal as variable and values.</summary>
    public static string Of(Formula formula)
    {
        var text = new NumberText();
        AddSizes(text, formula.Sizes);
        text.Add(formula.Clauses.Length);
        foreach (var clause in formula.Clauses)
        {
            text.Add(clause.Rule + 1);
            text.Add(clause.Literals.Length);
            foreach (var literal in clause.Literals)
            {
                text.Add(literal.Variable);
                text.AddSet(literal.Values);
            }
        }

        return text.ToString();
    }

    private static void AddSizes(NumberText text, IReadOnlyCollection<int> sizes)
    {
        text.Add(sizes.Count);
        foreach (var size in sizes)
        {
            text.Add(size);
        }
    }
}
