using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>A machine on both sides.</summary>
/// <param name="LogicBefore">Null where its rules could not be proved.</param>
/// <param name="LogicAfter">Null where its rules could not be proved.</param>
internal sealed record MachinePair(Machine Before, Machine After, OrderLogic? LogicBefore, OrderLogic? LogicAfter)
{
    public MachineId Id => After.Id.Value;

    /// <summary>Everything of both could be read: what is missing is really gone.</summary>
    public bool IsWhole =>
        Before.IsWhole
        && After.IsWhole
        && Before.FaultyOptions.IsEmpty
        && After.FaultyOptions.IsEmpty
        && Before.Plan.IsWhole
        && After.Plan.IsWhole;
}
