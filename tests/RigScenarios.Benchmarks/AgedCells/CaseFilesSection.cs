using System.Text;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The part of docs/aging.md about warnings and case files.</summary>
internal static class CaseFilesSection
{
    public static void Write(StringBuilder text) => text.Append("""

        ## Warnings

        Of each phase; they change no figure.

        | name | when |
        | --- | --- |
        | CALENDAR_TEMPERATURE, CHARGE_STATE | it stood at a temperature, at a charge at which the set was not tested |
        | CYCLE_TEMPERATURE, RATE, DEPTH | the same of its cycles |
        | LONG | days or cycles from the start are more than in the tests |
        | COLD_CHARGE | charged below 10 °C |
        | KNEE | below 80 % of the capacity |
        | LOW_VOLTAGE | a mean voltage is given that lies below the foot of the set's law |
        | NO_CALENDAR | the set knows no standing, and it stood |
        | R_BY_RULE | the resistance follows from the capacity |
        | DEFAULT_MODEL | nobody knows the chemistry |
        | MEASURED_ABOVE_NEW | more was measured than a new battery has |
        | PACE_LIMITED | the pace was held at a quarter or four times that of the set |

        ## Case files

        `dotnet run -c Release --project tests/RigScenarios.Benchmarks -- aging CASES.json RESULTS.json` follows the histories
        of a file. `cases` is a list of `{id, model, phases}`; `model` is the name of a set, or `unknown`. A phase is one of:

        | kind | fields |
        | --- | --- |
        | `storage` | `days`, `temperatureC`, `soc` |
        | `cycling` | `days`, `temperatureC`, `fullCycles`, `depth`, `cRate`, `meanSoc` or `meanVoltageV` |
        | | `soc`, if it stands at another charge meanwhile |
        | `shooting` | `days`, `temperatureC` and `soc` in storage, `shootingDays`, and one of the two: |
        | | `course`: a list of `hours`, `fromSoc`, `toSoc`, `temperatureC` |
        | | `depth`, with `hours`, `shootTemperatureC` and `cRate` where known |
        | `measured` | `capacityFraction`; `historyKnown`, `resistanceFactor` |

        Instead of model and phases a case may have `words`: `chemistry` (unknown, NMC, NCA, LFP), `bought`, `today`,
        `stored`, `place`, `shootsPerMonth`, `emptied`, `measuredPercent`, `secondHand`, `monthsAhead`. `daysTo80` and `band`
        ask for the time to 80 % and for the band. A result has `aQ`, `aR`, the four parts, both paces and the warnings after
        each phase, and of a course the `day`.

        Forty histories of an independent program lie in tests/RigScenarios.Checks/data; `ReferenceAgingChecks` holds every
        figure of them.

        """);
}
