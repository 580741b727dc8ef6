using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using RigScenarios.Requests;

namespace RigScenarios.Page.Tests.Asked;

/// <summary>A browser has one thread: whoever waits on it without giving it back waits for ever, and no server stands behind
/// it.</summary>
public sealed class OneThreadTests
{
    /// <summary>What blocks a thread until another one does something.</summary>
    private static readonly HashSet<string> Blocking =
    [
        "Task.Wait", "Task.WaitAll", "Task.WaitAny", "Task`1.get_Result", "Thread.Sleep",
        "Thread.Join", "Thread.Start", "SemaphoreSlim.Wait", "ManualResetEventSlim.Wait", "WaitHandle.WaitOne", "Monitor.Wait",
        "SpinWait.SpinUntil", "Parallel.For", "Parallel.ForEach", "Parallel.Invoke", "BlockingCollection`1.Take",
    ];

    [Fact]
    public void Nothing_waits_but_by_giving_the_thread_back() => Assert.Empty(Called(typeof(PageRequests)).Intersect(Blocking));

    [Fact]
    public void The_list_finds_what_waits() =>
        // A connection of the server's waits where its reader is slow: there it may.
        Assert.Contains("Task.Wait", Called(typeof(OneThreadTests)));

    [Fact]
    public void No_server_is_needed() => Assert.DoesNotContain(typeof(PageRequests).Assembly.GetReferencedAssemblies(),
        used => used.Name!.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal));

    /// <summary>What the test above finds.</summary>
    internal static void Waits(Task task) => task.Wait(TestContext.Current.CancellationToken);

    private static HashSet<string> Called(Type type)
    {
        using var file = new PEReader(File.OpenRead(type.Assembly.Location));
        var metadata = file.GetMetadataReader();
        var called = new HashSet<string>(StringComparer.Ordinal);
        foreach (var handle in metadata.MemberReferences)
        {
            var member = metadata.GetMemberReference(handle);
            if (OwnerOf(metadata, member.Parent) is { } owner)
                called.Add($"{owner}.{metadata.GetString(member.Name)}");
        }
        return called;
    }

    private static string? OwnerOf(MetadataReader metadata, EntityHandle parent)
    {
        if (parent.Kind == HandleKind.TypeReference)
            return metadata.GetString(metadata.GetTypeReference((TypeReferenceHandle)parent).Name);
        if (parent.Kind != HandleKind.TypeSpecification)
            return null;
        // A generic type's signature: its kind, whether it is a class, and which.
        var signature = metadata.GetBlobReader(metadata.GetTypeSpecification((TypeSpecificationHandle)parent).Signature);
        return signature.ReadSignatureTypeCode() == SignatureTypeCode.GenericTypeInstance && signature.ReadByte() > 0
            && signature.ReadTypeHandle() is { Kind: HandleKind.TypeReference } generic
            ? metadata.GetString(metadata.GetTypeReference((TypeReferenceHandle)generic).Name) : null;
    }
}
