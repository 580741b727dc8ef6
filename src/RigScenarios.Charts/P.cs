namespace RigScenarios.Charts; internal static class Placeholder;
