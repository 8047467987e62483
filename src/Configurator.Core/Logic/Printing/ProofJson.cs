using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Configurator.Core.Logic.Printing;

/// <summary>What is proved of machines' rules, for programs.</summary>
public static class ProofJson
{
    /// <param name="more">Writes what else is known of a machine into its object.</param>
    public static string Of(IEnumerable<MachineProof> proofs, Action<Utf8JsonWriter, MachineProof> more)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartArray();
            foreach (var proof in proofs)
            {
                Write(json, proof, more);
            }

            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, MachineProof proof, Action<Utf8JsonWriter, MachineProof> more)
    {
        json.WriteStartObject();
        json.WriteString("machine", proof.Logic.Machine.Id.Value.Value);
        json.WriteNumber("options", proof.Logic.Machine.Options.Count);
        json.WriteNumber("rules", proof.Logic.Rules.Length);
        json.WriteString(
            "configurations",
            proof.Logic.Count(PartialOrder.Empty)?.ToString(CultureInfo.InvariantCulture) ?? "not computed"
        );
        json.WriteBoolean("empty", proof.Health.IsEmpty);
        Write(json, "never-orderable", proof.Health.NeverOrderable.Select(item => item.Option.Value));
        Write(json, "always-included", proof.Health.AlwaysIncluded.Select(item => item.Option.Value));
        Write(json, "adding-nothing", proof.Health.Redundant.Select(item => item.Rule.Span.ToString()));
        Write(json, "single-way-out", proof.Health.SingleWayOut.Select(item => item.Choice.Id.Value.Value));
        more(json, proof);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }
}
