using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>
/// The outer size of a part, taken as a box with its edges along the rig's axes.
/// </summary>
/// <param name="Length">Edge along x, forward along the lens.</param>
/// <param name="Width">Edge along y, to the camera's left.</param>
/// <param name="Height">Edge along z, up.</param>
public sealed record BoxSize(Length Length, Length Width, Length Height);
