using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Connections.Features;
using Microsoft.AspNetCore.Http;
using RigScenarios.Page.Settings;

namespace RigScenarios.Page.Address;

/// <summary>
/// Connections that have not shown the key yet. They get little time and little room, and when room is short the oldest of them
/// goes: so whoever opens connections and says nothing never keeps out who has the key.
/// </summary>
internal sealed class Strangers(PageLimits limits)
{
    private readonly Lock gate = new();
    private readonly LinkedList<Stranger> waiting = new();
    private int known;

    /// <summary>Watches a connection from its first moment to its last.</summary>
    /// <param name="next">What serves it.</param>
    public ConnectionDelegate Watch(ConnectionDelegate next) => async connection =>
    {
        var stranger = new Stranger(connection);
        connection.Items[typeof(Stranger)] = stranger;
        var place = new LinkedListNode<Stranger>(stranger);
        Stranger? oldest = null;
        lock (gate)
        {
            waiting.AddLast(place);
            if (waiting.Count > limits.Strangers)
            {
                oldest = waiting.First!.Value;
                waiting.RemoveFirst();
            }
        }
        oldest?.Refuse("Others wait too.");
        await using var patience = new Timer(_ => LetGo(place), null, limits.StrangerTime, Timeout.InfiniteTimeSpan);
        try
        {
            await next(connection);
        }
        finally
        {
            lock (gate)
            {
                if (place.List is not null)
                    waiting.Remove(place);
                if (stranger.IsKnown)
                    known--;
            }
        }
    };

    /// <summary>The connection of a request showed the key.</summary>
    /// <param name="context">The request.</param>
    /// <returns>Whether there is room for it; always for one that is known already.</returns>
    public bool Knows(HttpContext context)
    {
        var items = context.Features.Get<IConnectionItemsFeature>()?.Items;
        if (items is null || !items.TryGetValue(typeof(Stranger), out var item) || item is not Stranger stranger)
            return true;
        lock (gate)
        {
            if (stranger.IsKnown)
                return true;
            if (known >= limits.Connections)
                return false;
            known++;
            stranger.IsKnown = true;
            if (waiting.Find(stranger) is { } place)
                waiting.Remove(place);
            return true;
        }
    }

    private void LetGo(LinkedListNode<Stranger> place)
    {
        lock (gate)
        {
            if (place.List is null)
                return;
            waiting.Remove(place);
        }
        place.Value.Refuse("It did not show the key in time.");
    }

    private sealed class Stranger(ConnectionContext connection)
    {
        public bool IsKnown { get; set; }

        public void Refuse(string why) => connection.Abort(new ConnectionAbortedException(why));
    }
}
