using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>Homes and designations: the most expensive changes there are.</summary>
public static class HomeKinds
{
    public static readonly ChangeKind HomeMoved = new(
        "home-moved",
        ReviewTopic.Homes,
        Severity.Warning,
        "Homes that moved",
        "A cable goes elsewhere than on machines that are built, and so does its signal in the controller"
    );

    public static readonly ChangeKind DesignationChanged = new(
        "designation-changed",
        ReviewTopic.Homes,
        Severity.Warning,
        "Designations that changed",
        "Labels and documents of machines that are built call the device otherwise"
    );

    public static readonly ChangeKind MasterMoved = new(
        "master-moved",
        ReviewTopic.Homes,
        Severity.Warning,
        "Masters that moved or were swapped",
        "Every cable at the master changes its length or its port"
    );

    public static readonly ChangeKind PlaceMoved = new(
        "place-moved",
        ReviewTopic.Homes,
        Severity.Warning,
        "Wires in the box that moved",
        "A wire in the box goes to another input, output or port than on machines that are built"
    );

    public static readonly ChangeKind HomeAdded = new(
        "home-added",
        ReviewTopic.Homes,
        Severity.Note,
        "New homes",
        "A port is taken that was free"
    );

    public static readonly ChangeKind BoxCableAdded = new(
        "box-cable-added",
        ReviewTopic.Homes,
        Severity.Note,
        "New cables into the control box",
        "The box needs an entry and terminals for it, not only a port in the field"
    );

    public static readonly ChangeKind HomeRemoved = new(
        "home-removed",
        ReviewTopic.Homes,
        Severity.Note,
        "Homes given up",
        "A port becomes free"
    );

    public static readonly ChangeKind Renamed = new(
        "renamed",
        ReviewTopic.Homes,
        Severity.Note,
        "Renamed",
        "The new id lists the old one, so that both count as the same"
    );

    public static ImmutableArray<ChangeKind> All { get; } =
    [HomeMoved, PlaceMoved, DesignationChanged, MasterMoved, HomeAdded, BoxCableAdded, HomeRemoved, Renamed];
}
