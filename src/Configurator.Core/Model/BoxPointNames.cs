namespace Configurator.Core.Model;

/// <summary>How places of the box are called in port plans and messages.</summary>
public static class BoxPointNames
{
    /// <summary>In port plans.</summary>
    public static string Key(BoxPoint point) =>
        point switch
        {
            BoxPoint.SafetyInput => "safety-inputs",
            BoxPoint.SafetyOutput => "safety-outputs",
            BoxPoint.FastInput => "fast-inputs",
            BoxPoint.Input => "inputs",
            BoxPoint.Output => "outputs",
            BoxPoint.TorqueOff => "torque-off",
            _ => "network",
        };

    /// <summary>In messages.</summary>
    public static string Noun(BoxPoint point) =>
        point switch
        {
            BoxPoint.SafetyInput => "safety input",
            BoxPoint.SafetyOutput => "safety output",
            BoxPoint.FastInput => "fast input",
            BoxPoint.Input => "plain input",
            BoxPoint.Output => "plain output",
            BoxPoint.TorqueOff => "torque-off pair",
            _ => "network port",
        };
}
