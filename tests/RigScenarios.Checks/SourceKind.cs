namespace RigScenarios.Checks;

/// <summary>What made the figures that a check expects.</summary>
public enum SourceKind
{
    /// <summary>A standard, or a page that quotes one.</summary>
    Standard,

    /// <summary>A law, a rule of transport, or an authority's guidance and worked examples.</summary>
    Regulation,

    /// <summary>A handbook or textbook: a table or a worked example.</summary>
    Handbook,

    /// <summary>A paper in a journal or a report.</summary>
    Paper,

    /// <summary>A maker's data sheet or application note.</summary>
    DataSheet,

    /// <summary>Open measured data.</summary>
    OpenData,

    /// <summary>A program that others wrote for the same equations.</summary>
    IndependentProgram,

    /// <summary>A general library: a solver, an optimizer, an interpolator.</summary>
    ReferenceLibrary,

    /// <summary>A closed form that stands in textbooks, worked by hand.</summary>
    ClosedForm,

    /// <summary>Common practice without a source.</summary>
    TradePractice,

    /// <summary>A figure from memory, its source not at hand.</summary>
    FromMemory,
}
