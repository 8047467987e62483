using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>Recipes, notes and delivered machines.</summary>
public static class SettingKinds
{
    public static readonly ChangeKind DeliveredContradicted = new(
        "delivered-contradicted",
        ReviewTopic.Settings,
        Severity.Warning,
        "Delivered machines contradicted",
        "A machine in a plant is wired otherwise than its documents will say; a retrofit starts from there"
    );

    public static readonly ChangeKind DeliveredEdited = new(
        "delivered-edited",
        ReviewTopic.Settings,
        Severity.Warning,
        "Records of delivered machines that changed",
        "The record must say where the cables really are: was anything moved in the plant, or only in the file?"
    );

    public static readonly ChangeKind SettingChanged = new(
        "setting-changed",
        ReviewTopic.Settings,
        Severity.Note,
        "Settings",
        "A sensor or actuator is set otherwise at the next changeover"
    );

    public static readonly ChangeKind RecipeChanged = new(
        "recipe-changed",
        ReviewTopic.Settings,
        Severity.Note,
        "Recipes added and removed",
        "A product can, or cannot, be run from the list"
    );

    public static readonly ChangeKind SanitationChanged = new(
        "sanitation-changed",
        ReviewTopic.Settings,
        Severity.Note,
        "Sanitation steps",
        "The crew cleans otherwise"
    );

    public static readonly ChangeKind NotesChanged = new(
        "notes-changed",
        ReviewTopic.Settings,
        Severity.Note,
        "Notes",
        "A document tells its reader something else"
    );

    public static ImmutableArray<ChangeKind> All { get; } =
    [DeliveredContradicted, DeliveredEdited, SettingChanged, RecipeChanged, SanitationChanged, NotesChanged];
}
