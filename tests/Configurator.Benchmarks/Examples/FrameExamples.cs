using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>How long a message and its answer take, from process data, on-request octets and bit rate.</summary>
internal static class FrameExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (Sequence(given) is not { } sequence)
        {
            return;
        }

        var (master, device) = given.Text("direction", "access", "dir", "rw")?.StartsWith('w') == true ? sequence.OctetsWrite : sequence.OctetsRead;
        var bits = Bits(given, given.Whole("m") ?? master, given.Whole("n") ?? device, isWorst: true);
        var least = Bits(given, given.Whole("m") ?? master, given.Whole("n") ?? device, isWorst: false);
        answer.Add(Kind.Plain, master, "m", "m_octets");
        answer.Add(Kind.Plain, device, "n", "n_octets");
        answer.Add(Kind.Plain, sequence.OctetsRead.Master, "m_read");
        answer.Add(Kind.Plain, sequence.OctetsRead.Device, "n_read");
        answer.Add(Kind.Plain, sequence.OctetsWrite.Master, "m_write");
        answer.Add(Kind.Plain, sequence.OctetsWrite.Device, "n_write");
        answer.Add(Kind.Plain, sequence.OnRequestOctets, "od", "od_octets");
        answer.Add(Kind.Plain, bits, "tbits_worst", "tbits_max", "tbits", "bits");
        answer.Add(Kind.Plain, least, "tbits_min", "tbits_best");
        answer.Say(sequence.Type, "type", "m_sequence_type", "m_sequence");
        if (RateOf(given.Text("com", "rate", "bit_rate", "bitrate", "bit_rate_bit_s", "baud")) is not { } rate)
        {
            return;
        }

        var longest = rate.Milliseconds(bits);
        answer.Add(Kind.Milliseconds, longest, "t", "t_mseq", "t_worst", "t_max", "t_mseq_max", "t_mseq_worst");
        answer.Add(Kind.Milliseconds, rate.Milliseconds(least), "t_min", "t_mseq_min", "t_best");
        answer.Add(Kind.Milliseconds, rate.Milliseconds(1), "t_bit", "tbit");
        Cycles(given, answer, longest);
    }

    private static void Cycles(Given given, Answer answer, Rational longest)
    {
        var cycle = CycleTime.ShortestFor(longest);
        answer.Add(Kind.Milliseconds, cycle, "cycle", "min_cycle", "min_cycle_time", "t_cyc", "mincycletime");
        if (cycle is { } shortest)
        {
            answer.Say($"0x{CycleTime.Encode(shortest):X2}", "octet", "min_cycle_octet", "code");
        }

        if ((given.Number(Kind.Milliseconds, "cycle", "t_cyc", "tcyc") ?? cycle) is { } used)
        {
            var age = InputAge.Of(used, longest);
            answer.Add(Kind.Milliseconds, age.MillisecondsMin, "age_min");
            answer.Add(Kind.Milliseconds, age.MillisecondsMax, "age_max");
            answer.Add(Kind.Milliseconds, age.Jitter, "jitter");
            answer.Add(Kind.Milliseconds, used - longest, "t_idle", "idle");
            answer.Say(used >= longest, "ok", "cycle_ok", "fits");
        }
    }

    public static BitRate? RateOf(string? text) =>
        text?.Trim().ToUpperInvariant() switch
        {
            "COM1" or "1" or "4800" or "4.8" => BitRate.Com1,
            "COM2" or "2" or "38400" or "38.4" => BitRate.Com2,
            "COM3" or "3" or "230400" or "230.4" => BitRate.Com3,
            _ => null,
        };

    private static int Bits(Given given, int master, int device, bool isWorst)
    {
        var answer = given.Whole("ta", "t_a") ?? (isWorst ? 10 : 1);
        var masterGap = given.Whole("t1") ?? (isWorst ? 1 : 0);
        var deviceGap = given.Whole("t2") ?? (isWorst ? 3 : 0);
        return ((master + device) * BitRates.BitsPerOctet) + answer + ((master - 1) * masterGap) + ((device - 1) * deviceGap);
    }

    private static MSequence? Sequence(Given given)
    {
        if (given.Whole("m") is { } master && given.Whole("n") is { } device)
        {
            return new("", device - 2, master - 2, 1);
        }

        var input = Octets(given, "pd_in", "pdin", "pd_in_octets", "input_octets", "in_octets");
        var output = Octets(given, "pd_out", "pdout", "pd_out_octets", "output_octets", "out_octets");
        var onRequest = given.Whole("od", "od_octets", "on_request", "on_request_octets");
        if (given.Text("type", "m_sequence_type", "m_sequence") is { } type && type.StartsWith("TYPE_", StringComparison.OrdinalIgnoreCase))
        {
            return ByType(type.ToUpperInvariant(), input, output, onRequest);
        }

        if (given.Whole("operate_code", "m_sequence_code", "code") is { } code)
        {
            var isPre = given.Text("state")?.StartsWith("PRE", StringComparison.OrdinalIgnoreCase) == true;
            return isPre ? MSequences.InPreoperate(code) : MSequences.InOperate(code, (input ?? 0) * 8, (output ?? 0) * 8);
        }

        return input is null && output is null ? null : MSequences.OfOctets(input ?? 0, output ?? 0, onRequest ?? 1);
    }

    private static MSequence ByType(string type, int? input, int? output, int? onRequest) =>
        type switch
        {
            "TYPE_0" => new(type, 0, 0, 1),
            "TYPE_1_1" or "TYPE_1_2" => new(type, 0, 0, 2),
            "TYPE_1_V" => new(type, 0, 0, onRequest ?? 8),
            "TYPE_2_1" => new(type, 1, 0, 1),
            "TYPE_2_2" => new(type, 2, 0, 1),
            "TYPE_2_3" => new(type, 0, 1, 1),
            "TYPE_2_4" => new(type, 0, 2, 1),
            "TYPE_2_5" => new(type, 1, 1, 1),
            _ => new(type, input ?? 0, output ?? 0, onRequest ?? 1),
        };

    private static int? Octets(Given given, params string[] names) =>
        given.Whole(names) ?? (given.Whole([.. names.Select(name => name.Replace("_octets", "", StringComparison.Ordinal) + "_bits")]) is { } bits ? (bits + 7) / 8 : null);
}
