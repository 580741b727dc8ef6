using System.Runtime.InteropServices;
using RigScenarios.Search.Choices;

namespace RigScenarios.Tests.Search.Choices;

/// <summary>The native part of the solver: there where this program was built, and told in plain words where it is not.</summary>
public sealed class SolverLibraryTests
{
    [Fact]
    public void It_is_there_where_the_program_was_built() => SolverLibrary.Require();

    [Fact]
    public void Where_it_is_missing_the_message_says_for_which_machine_and_what_to_do()
    {
        foreach (var fault in (Exception[])[new DllNotFoundException("x"), new TypeInitializationException("x", null),
            new BadImageFormatException("x")])
        {
            var told = Assert.Throws<FileNotFoundException>(() => SolverLibrary.Require(() => throw fault));
            Assert.Contains(RuntimeInformation.RuntimeIdentifier, told.Message, StringComparison.Ordinal);
            Assert.Contains("dotnet build", told.Message, StringComparison.Ordinal);
        }
    }
}
