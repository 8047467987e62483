using System.Collections.Immutable;

namespace Configurator.Core.Documents.Blocks;

/// <summary>Options to pick from, in groups; the page's script puts a control before each.</summary>
public sealed record PickList(ImmutableArray<PickGroup> Groups) : Block;

/// <param name="Choice">Id of the choice that the group is; empty for options of a family.</param>
/// <param name="Hint">How many are to be taken.</param>
public sealed record PickGroup(string Id, string Choice, string Title, string Hint, ImmutableArray<Pick> Picks);

/// <param name="Option">Its id.</param>
/// <param name="Marks">What a salesperson has to know of it: price, lead time, what it is not released for.</param>
/// <param name="Rules">What it needs, rules out and brings along, a sentence each.</param>
public sealed record Pick(
    string Option,
    string Title,
    string Summary,
    ImmutableArray<PickMark> Marks,
    ImmutableArray<string> Rules,
    Link Details
)
{
    public string DetailsOf => $"{Details.Text}: {Title}";
}

/// <param name="Kind">A word for the style sheet; the meaning always stands in the text.</param>
public sealed record PickMark(string Text, string Kind);

/// <summary>Where the page's script puts the order; without scripts a sentence stands there.</summary>
/// <param name="Id">Of the place.</param>
public sealed record PickerPlace(string Id, string Text) : Block;
