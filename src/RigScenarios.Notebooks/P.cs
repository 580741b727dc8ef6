namespace RigScenarios.Notebooks; internal static class Placeholder;
