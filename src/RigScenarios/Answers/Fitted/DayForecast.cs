using RigScenarios.Batteries;
using RigScenarios.Fits;
using RigScenarios.Limits;
using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Answers.Fitted;

/// <summary>A planned day on the fitted battery.</summary>
/// <param name="Day">The day's short name.</param>
/// <param name="Answer">The one answer for it, with the fitted values in the scenario.</param>
/// <param name="Forecast">How long the battery lasts through that day, begun again and again, and what is open of it.</param>
public sealed record DayForecast(string Day, RigAnswer Answer, FitForecast Forecast)
{
    /// <summary>The day's name for people.</summary>
    public string Title => Answer.Plan.Days[0].Title ?? LimitSentences.Element(Day);

    /// <summary>The verdict on power: the same as every other face gives for the scenario with the fitted values.</summary>
    public Verdict Verdict => Answer.Of(QuestionKind.Power)!.Verdict;

    /// <summary>What the time may be off by: the stated error of the answer.</summary>
    public Duration Within => QuestionRules.Doubt(Answer);

    /// <summary>Chance that it lasts until wrap, by the stated error as 95 % of a normal distribution.</summary>
    public Ratio Chance
    {
        get
        {
            var (wanted, lasts) = (Answer.Working.Seconds, (Answer.Working + Answer.Tightest.Reserve.Time).Seconds);
            if (Answer.Tightest.Reserve.IsLowerBound)
                return Ratio.FromPercent(100);
            if (!(lasts > 0))
                return Ratio.Zero;
            var deviation = Within.Seconds / lasts / FittedError.Deviations;
            return Ratio.FromDecimalFractions(Math.Exp(NormalTail.LogBelow(Math.Log(lasts / wanted) / deviation)));
        }
    }
}
