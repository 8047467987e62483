using Configurator.Core.Engineering.Timing;

namespace Configurator.Benchmarks.Examples;

/// <summary>What an octet of the first parameter page says. Which parameter it is may be left to what is asked.</summary>
internal static class OctetExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (given.Octets("octet", "code", "byte", "value", "octet_hex", "octets", "hex") is not [var octet])
        {
            return;
        }

        var parameter = given.Text("parameter", "name", "what") ?? "";
        if (Is(parameter, "capability", "m-sequence"))
        {
            Capability(answer, octet);
            answer.Say(MSequenceCapability.Decode(octet).OperateOctets is null ? "invalid" : "valid", "status", "valid");
        }
        else if (Is(parameter, "revision"))
        {
            answer.Say(octet is 0x10 or 0x11 ? "valid" : "invalid", "status", "valid");
        }
        else if (Is(parameter, "process", "pd"))
        {
            ProcessData(answer, octet);
        }
        else
        {
            Cycle(answer, octet);
            Capability(answer, octet);
            ProcessData(answer, octet);
        }

        answer.Say(FormattableString.Invariant($"{octet >> 4}.{octet & 15}"), "revision", "protocol_revision");
    }

    private static void Cycle(Answer answer, byte octet)
    {
        var cycle = CycleTime.Decode(octet);
        answer.Add(Kind.Milliseconds, cycle, "cycle", "min_cycle", "min_cycle_time", "t", "mincycletime", "cycle_time", "time", "");
        answer.Add(Kind.Plain, octet >> 6, "base", "time_base", "time_base_code");
        answer.Add(Kind.Plain, octet & 63, "multiplier", "k");
        answer.Say(cycle is null ? "invalid" : octet == 0 ? "no value" : "valid", "status", "valid");
        if (cycle is null)
        {
            answer.Say(Missing.Value, "cycle", "cycle_ms", "min_cycle_ms");
        }
    }

    private static void Capability(Answer answer, byte octet)
    {
        var capability = MSequenceCapability.Decode(octet);
        answer.Say(capability.HasIsdu, "isdu", "isdu_supported");
        answer.Add(Kind.Plain, capability.OperateCode, "operate_code", "operate");
        answer.Add(Kind.Plain, capability.PreoperateCode, "preoperate_code", "preoperate");
        answer.Add(Kind.Plain, capability.OperateOctets, "operate_od", "od_operate", "od");
        answer.Add(Kind.Plain, capability.PreoperateOctets, "preoperate_od", "od_preoperate");
    }

    private static void ProcessData(Answer answer, byte octet)
    {
        var length = ProcessDataLength.Decode(octet);
        answer.Add(Kind.Plain, length?.Octets, "octets", "pd_octets", "length_octets", "pd_in", "pd_out", "length", "bytes", "n_octets");
        answer.Add(Kind.Plain, length?.Bits, "bits", "length_bits", "pd_bits");
        answer.Say((octet & 0x40) != 0, "sio", "sio_supported");
        answer.Say((octet & 0x80) != 0, "byte", "byte_flag");
        answer.Say(length is null ? "invalid" : "valid", "status", "valid");
    }

    private static bool Is(string parameter, params string[] words) =>
        Array.Exists(words, word => parameter.Contains(word, StringComparison.OrdinalIgnoreCase));
}
