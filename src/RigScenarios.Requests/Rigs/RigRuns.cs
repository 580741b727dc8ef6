using System.Diagnostics;
using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Limits;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Requests.Rigs;

/// <summary>The runs of the form: the answer to what is given, and what takes many runs and comes after it.</summary>
internal sealed class RigRuns(RigPlaces places)
{
    private const string OfAnswer = "answer";
    private const string Later = "later";

    // From here on nobody misses the time of a few frames; the second is that time.
    private static readonly TimeSpan LongWait = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Frames = TimeSpan.FromMilliseconds(50);

    private readonly DayCache days = new();

    /// <summary>One run of the queue "now". With <c>"until": "answer"</c> it ends after the answer; with <c>"from":
    /// "answer"</c> it tells only what comes after it: so two programs may share a run. With <c>"parts": "later"</c> charts and
    /// drawings come right after the answer, in a message of their own: where both ends compute at once, the verdict is shown
    /// while they are made.</summary>
    public async Task NowAsync(JsonElement json, RunReply reply, CancellationToken cancellation)
    {
        var (isOnlyAnswer, isAfterAnswer) = (Says(json, "until", OfAnswer), Says(json, "from", OfAnswer));
        var isPartsLater = Says(json, "parts", Later);
        var clock = Stopwatch.StartNew();
        var place = places.Of(json);
        var given = RigPlaces.Given(json, place);
        var key = DayCache.KeyOf(given, place, places.PartsMark);
        var answer = RigSoFar.Of(given, days.Find(key), cancellation);
        var isWhole = answer.Scenario is not null;
        // What it rests on and what would make it work take many runs, so they come after the answer, the sooner done first. The
        // next change stops them.
        var seeks = isWhole && answer.Answer is { Verdict: Verdict.Close or Verdict.Fails };
        if (!isAfterAnswer)
        {
            // Whoever drags wants the picture at once; the text only where somebody looks at it.
            var text = isWhole && !RequestJson.Flag(json, "brief") ? places.TextFor(place, answer.Scenario!) : null;
            DayParts Charts(RigAnswer now) => days.Charts(key, now);
            // Without an answer there is nothing to wait for.
            isPartsLater = isPartsLater && answer.Answer is not null;
            reply.Send("answer", writer => RigAnswerJson.Write(writer, answer, given,
                isPartsLater ? null : Charts, seeks, text));
            if (isPartsLater)
            {
                // Where all runs on one thread, others have their turn here: a newer run takes over. After a long wait the page
                // shows the verdict before the charts are made, also where it has no thread of its own.
                if (clock.Elapsed > LongWait)
                    await Task.Delay(Frames, cancellation);
                else
                    await Task.Yield();
                cancellation.ThrowIfCancellationRequested();
                reply.Send("parts", writer => RigAnswerJson.WriteParts(writer, answer, Charts));
            }
        }
        if (!isOnlyAnswer)
            TellMore(answer, seeks, reply, cancellation);
        reply.End("done", writer => writer.WriteNumber("milliseconds", Math.Round(clock.Elapsed.TotalMilliseconds, 1)));
    }

    private static void TellMore(RigSoFar answer, bool seeks, RunReply reply, CancellationToken cancellation)
    {
        if (answer.Answer is { } first)
        {
            var effects = LeadingAssumptions.Find(first, cancellation: cancellation);
            reply.Send("rests-on", writer => RigAnswerJson.Write(writer, effects));
        }
        if (seeks)
        {
            var sets = WouldWork.Find(answer.Answer!, null, new RunProgress(reply, ""), cancellation);
            reply.Send("would-work", writer => RigAnswerJson.Write(writer, sets));
        }
    }

    private static bool Says(JsonElement json, string name, string word) => RequestJson.Text(json, name) switch
    {
        null => false,
        var text when text == word => true,
        _ => throw new ProblemException(ReplyStatus.BadRequest,
            [new Problem($"\"{name}\" says nothing that a run knows.", name, $"\"{word}\", or nothing")]),
    };
}
