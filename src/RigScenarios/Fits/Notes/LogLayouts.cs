using RigScenarios.Fits.Logs;

namespace RigScenarios.Fits.Notes;

/// <summary>What field notes say of a log's columns, in the words of its reader.</summary>
internal static class LogLayouts
{
    private const double Thousandth = 1e-3;

    /// <summary>The layout; what is not said is guessed by the reader.</summary>
    public static LogColumns Of(WrittenLog log) => new()
    {
        Time = Column(log.Columns.Time, log.Units.Time switch
        {
            LogTimeUnit.S => 1, LogTimeUnit.Ms => Thousandth, LogTimeUnit.Min => 60, LogTimeUnit.H => 3600, _ => null,
        }),
        Voltage = Column(log.Columns.Voltage, log.Units.Voltage switch
        {
            LogVoltageUnit.V => 1, LogVoltageUnit.Millivolt => Thousandth, _ => null,
        }),
        Current = Column(log.Columns.Current, log.Units.Current switch
        {
            LogCurrentUnit.A => 1, LogCurrentUnit.Milliampere => Thousandth, _ => null,
        }),
        Separator = log.Separator switch
        {
            LogSeparator.Comma => ',', LogSeparator.Semicolon => ';', LogSeparator.Tab => '\t', _ => null,
        },
        DecimalMark = log.DecimalMark switch { DecimalMark.Point => '.', DecimalMark.Comma => ',', _ => null },
        Samples = log.Rows == LogRowKind.Sample,
    };

    private static LogColumn? Column(string? name, double? factor) => name is null ? null : new LogColumn(name, factor);
}
