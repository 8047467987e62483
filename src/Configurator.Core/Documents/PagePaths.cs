using System.Globalization;
using Configurator.Core.Model;

namespace Configurator.Core.Documents;

/// <summary>Where each page stands, and how one leads to another.</summary>
public static class PagePaths
{
    public const string Catalogue = "index.html";
    public const string Options = "options/index.html";
    public const string Devices = "devices/index.html";
    public const string Findings = "findings/index.html";

    public static string Of(MachineId machine) => $"machines/{machine}/index.html";

    public static string PortPlan(MachineId machine) => $"machines/{machine}/port-plan.html";

    /// <summary>Declarations for the controller program, the same for every order.</summary>
    public static string ControllerTypes(MachineId machine) => $"machines/{machine}/controller.st";

    public static string EnableConstants(PublishedConfiguration configuration) => InFolder(configuration, "enable.st");

    public static string MonitoringData(PublishedConfiguration configuration) =>
        InFolder(configuration, "monitoring.json");

    /// <summary>The schema of a file that the site offers.</summary>
    public static string Schema(string name) => $"schemas/{name}";

    public static string Picker(MachineId machine) => $"machines/{machine}/order.html";

    public static string PickerScript(MachineId machine) => $"machines/{machine}/order-rules.js";

    public static string Of(OptionId option) => $"options/{option}.html";

    public static string Of(DeviceId device) => $"devices/{device}.html";

    public static string Finding(string code) => $"findings/{code.ToLower(CultureInfo.InvariantCulture)}.html";

    /// <param name="document">The file's name without its ending.</param>
    public static string Of(PublishedConfiguration configuration, string document = "index") =>
        InFolder(configuration, $"{document}.html");

    private static string InFolder(PublishedConfiguration configuration, string file) =>
        $"machines/{configuration.Machine}/configurations/{configuration.Id.Value}/{file}";

    /// <summary>A document of a configuration in another language than the site's first.</summary>
    public static string Of(PublishedConfiguration configuration, string document, string language) =>
        Of(configuration, $"{document}.{language}");

    /// <summary>A link from one file of the site to another, relative, so that the site works from any
    /// folder.</summary>
    public static string Relative(string from, string to)
    {
        var start = from.Split('/');
        var end = to.Split('/');
        var shared = 0;
        while (shared < start.Length - 1 && shared < end.Length - 1 && start[shared] == end[shared])
        {
            shared++;
        }

        return string.Concat(Enumerable.Repeat("../", start.Length - 1 - shared)) + string.Join('/', end[shared..]);
    }
}
