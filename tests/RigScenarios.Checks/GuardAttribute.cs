namespace RigScenarios.Checks;

/// <summary>
/// A test of a check itself: that every result has its case, that a comparison notices what differs. It rests on no source, and
/// the table of outside checks does not count it.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class GuardAttribute : Attribute;
