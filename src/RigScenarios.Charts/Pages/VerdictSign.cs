using RigScenarios.Limits;

namespace RigScenarios.Charts.Pages;

/// <summary>The sign of a verdict: a shape that is read without colour, beside the word and never in its place.</summary>
internal static class VerdictSign
{
    /// <summary>The class under which a style sheet colours it.</summary>
    public static string Class(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "rs-holds",
        Verdict.Close => "rs-close",
        Verdict.Fails => "rs-fails",
        _ => "rs-not-known",
    };

    /// <summary>The sign. A screen reader passes it over, for the word says the same.</summary>
    public static string Svg(Verdict verdict) =>
        $"<svg class=\"rs-sign\" viewBox=\"0 0 20 20\" width=\"20\" height=\"20\" aria-hidden=\"true\" "
            + $"focusable=\"false\">{Shape(verdict)}</svg>";

    // A ring with a tick; a triangle with a stroke; a filled square with a cross; a broken ring with a dot.
    private static string Shape(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "<circle cx=\"10\" cy=\"10\" r=\"8.2\"/><path d=\"M6 10.4l2.8 2.8 5.2-6\"/>",
        Verdict.Close => "<path d=\"M10 2.2L18.6 17.4H1.4Z\"/><path d=\"M10 8v4M10 14.6v.2\"/>",
        Verdict.Fails => "<path class=\"rs-sign-full\" d=\"M2 2h16v16H2Z\"/><path class=\"rs-sign-cut\" d=\"M6 6l8 8M14 6l-8 "
            + "8\"/>",
        _ => "<circle cx=\"10\" cy=\"10\" r=\"8.2\" stroke-dasharray=\"3.2 2.4\"/><path d=\"M7.6 7.8a2.4 2.4 0 1 1 2.4 "
            + "2.6v1.4M10 14.4v.2\"/>",
    };
}
