using System.Globalization;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Engine;

/// <summary>Values that a control has where its reader gave none: the chosen file's own.</summary>
internal static class ControlValues
{
    /// <summary>The value to go on with: the given one, else the file's, as the control shows it. The control is told the
    /// latter.</summary>
    public static T Use<T>(string control, T? given, T inFile, bool isOfFile)
        where T : struct
    {
        var shown = inFile is double number ? (T)(object)Shown(number) : inFile;
        CellDisplay.Show(new ControlPart(control) { Holds = Text(shown), IsOfFile = isOfFile });
        return given ?? shown;
    }

    // Six digits: -8 °C that went through kelvins is -8 again, and what the control shows is what is computed with.
    private static double Shown(double number) => double.IsFinite(number)
        ? double.Parse(number.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : number;

    private static string Text<T>(T value)
        where T : struct => value switch
        {
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString() ?? "",
        };
}
