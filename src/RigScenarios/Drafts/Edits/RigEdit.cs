namespace RigScenarios.Drafts.Edits;

/// <summary>A rig after a change.</summary>
/// <param name="Given">What is given now.</param>
/// <param name="Thing">The name in the kit of what came or changed; null where it is no thing.</param>
public sealed record EditedRig(GivenRig Given, string? Thing = null);
