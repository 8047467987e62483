using System.Collections.Immutable;

namespace Configurator.Core.Tests.Support;

/// <summary>The device library of the small catalogue.</summary>
internal static class SmallDevices
{
    public static ImmutableArray<string> All { get; } =
    [
        """
        device: eye
        title: Contrast sensor
        kind: sensor
        letters: BX
        connection: io-link
        plug: m12-a-4
        current: 40 mA
        io-link: {rate: com2, input-octets: 2, output-octets: 0, cycle: 2.3 ms}
        parameters:
          - {parameter: threshold, title: Switching threshold, index: 60, type: uint16, from: 0 percent, to: 100 percent, step: 0.1 percent}
          - {parameter: output, title: Output logic, index: 61, type: uint8, words: {light: 0, dark: 1}}
          - {parameter: pulses, title: Pulses a cup, index: 62, type: uint8, from: 1, to: 200, step: 1}
          - {parameter: hold, title: Hold time, index: 63, type: uint16, from: 0 ms, to: 500 ms, step: 1 ms}

        """,
        """
        device: prox
        title: Proximity switch
        kind: sensor
        letters: BG
        connection: switching
        plug: m12-a-4
        current: 20 mA

        """,
        """
        device: valves
        title: Valve manifold
        kind: valve-manifold
        letters: QM
        connection: io-link
        port-class: B
        pin-2: supply
        plug: m12-a-5
        current: 60 mA
        extra-current: 800 mA
        io-link: {rate: com2, input-octets: 1, output-octets: 4, cycle: 4 ms}
        air: 18 l/min

        """,
        """
        device: hub-4
        title: Hub for four plain signals
        kind: hub
        letters: KF
        connection: io-link
        plug: m12-a-4
        current: 30 mA
        io-link: {rate: com2, input-octets: 1, output-octets: 0, cycle: 3 ms}
        ports: {switching: [1, 2, 3, 4], current-per-port: 100 mA, current-in-all: 300 mA}

        """,
        """
        device: master-4
        title: Field master with two ports of each class
        kind: io-link-master
        letters: KF
        connection: wired
        ports:
          class-a: [1, 2]
          class-b: [3, 4]
          pin-2: either
          current-per-port: 500 mA
          current-in-all: 1 A
          extra-per-port: 1.6 A
          extra-in-all: 2 A

        """,
        """
        device: guard-switch
        title: Coded guard switch
        kind: safety
        letters: SF
        connection: wired
        plug: terminals

        """,
        """
        device: small-drive
        title: Drive for the agitator
        kind: drive
        letters: TA
        connection: wired
        heat: 12 W
        rail: 45 mm

        """,
        Cable("cord-4", "m12-a-4", "BN, WH, BU, BK", "2 m, 5 m, 10 m, 20 m"),
        Cable("cord-5", "m12-a-5", "BN, WH, BU, BK, GY", "2 m, 5 m, 10 m"),
        Cable("cord-open", "terminals", "BN, WH, BU, BK", "5 m, 10 m"),
        Cable("trunk-power", "m12-l-5", "BN, WH, BU, BK", "5 m, 10 m"),
        Cable("trunk-network", "m12-d-4", "YE, OG, WH, BU", "5 m, 10 m"),
    ];

    private static string Cable(string id, string farPlug, string cores, string lengths) =>
        $$"""
        device: {{id}}
        title: Stock cable
        kind: cordset
        letters: WG
        connection: none
        plug: m12-a-4
        far-plug: {{farPlug}}
        cordset: {lengths: [{{lengths}}], cores: [{{cores}}], conductor: 0.34 mm2, jacket: TPE}

        """;
}
