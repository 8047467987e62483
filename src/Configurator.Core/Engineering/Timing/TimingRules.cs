using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Engineering.Timing;

/// <summary>What is checked of time.</summary>
internal static class TimingRules
{
    public static readonly FindingRule Cycle = new(
        "timing.cycle",
        "Shortest cycle of IO-Link devices",
        new("CFG4301", Severity.Error, "Cycle too short for its messages"),
        "IO-Link Interface and System Specification v1.1.x (IEC 61131-9) A.3.6, A.3.7; corroborated"
    );

    public static readonly FindingRule Image = new(
        "timing.image",
        "Process data of masters",
        new("CFG4302", Severity.Error, "Too much process data at a master"),
        "octets that the master states"
    );

    public static readonly FindingRule Answer = new(
        "timing.answer",
        "Answer in time",
        new("CFG4303", Severity.Error, "Answer comes too late"),
        "sum of the longest times of every part; IOL-07, derived, corroborated"
    );

    public static readonly FindingRule Position = new(
        "timing.position",
        "Position by a signal",
        new("CFG4304", Severity.Error, "Signal too uncertain in time for its position"),
        "PKG-01 and PKG-02: speed times the sum of what varies; corroborated"
    );

    public static readonly FindingRule Stated = new(
        "timing.stated",
        "Times are stated where one is needed",
        new("CFG4305", Severity.Error, "Time not stated"),
        "no time is assumed that nobody states"
    );

    public static ImmutableArray<FindingRule> All { get; } = [Cycle, Image, Answer, Position, Stated];
}
