using System.Collections.Immutable;

namespace Configurator.Core.Tests.Support;

/// <summary>The options of the small catalogue.</summary>
internal static class SmallOptions
{
    public static ImmutableArray<string> All { get; } =
    [
        """
        option: film
        title: Lid film
        summary: Seals every cup with film from a roll
        offered-on: [cup-one]

        """,
        """
        option: precut
        title: Pre-cut lids
        summary: Lays a lid on every cup
        offered-on: [cup-one]

        """,
        """
        option: cup-check
        title: Cup check
        summary: Sees whether a cup is there
        offered-on: [cup-one]
        fits:
          - fit: cup-eye
            device: eye
            stations: [outfeed]
            purpose: Sees the cup
            settings: [threshold]
            set: {output: light}

        """,
        """
        option: heads
        title: Dosing heads
        summary: Fills more cups at once
        offered-on: [cup-one]
        quantity: {from: 1, to: 2, counts: heads}
        fits:
          - {fit: dose-valve, device: valves, stations: [filler, outfeed], purpose: Opens the head, per: quantity}

        """,
        """
        option: counter
        title: Cup counter
        summary: Counts the cups that leave
        offered-on: [cup-one]
        fits:
          - {fit: count-hub, device: hub-4, stations: [outfeed], purpose: Gathers plain signals}
          - {fit: count-eye, device: prox, stations: [outfeed], purpose: Counts}

        """,
        """
        option: agitator
        title: Agitator
        summary: Keeps the product moving
        offered-on: [cup-one]
        touches-box: [drive]
        fits:
          - {fit: stirrer, device: small-drive, stations: [cabinet], purpose: Turns the agitator, wiring: inside}

        """,
    ];
}
