// Folders that use each other, each pair in another way: that the house's arrows test finds them shows that it can fail.
#pragma warning disable CA1812, CA1822, CA1052, IDE0130, MA0048, CS0649, CS1998, CA1000
namespace RigScenarios.Tests.House.ForbiddenArrows
{
    internal sealed class Parent
    {
        public static int Value() => Child.InChild.Value;
    }

    namespace Child
    {
        internal static class InChild
        {
            public static int Value => nameof(Parent).Length;

            public static Type Of() => typeof(Parent);
        }
    }

    internal class Used
    {
        public static int Value() => 1;
    }

    namespace ByBody
    {
        namespace First
        {
            internal class One : Used
            {
                public static int Ask() => Second.Two.Number;
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One
            {
                public static int Number => 2;
            }
        }
    }

    namespace ByLambda
    {
        namespace First
        {
            internal class One : Used
            {
                public static Func<int, int> Ask => number => number + Second.Two.Number;
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One
            {
                public static int Number => 2;
            }
        }
    }

    namespace ByAwait
    {
        namespace First
        {
            internal class One : Used
            {
                public static async Task<int> AskAsync()
                {
                    await Task.Yield();
                    return Second.Two.Number;
                }
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One
            {
                public static int Number => 2;
            }
        }
    }

    namespace ByIterator
    {
        namespace First
        {
            internal class One : Used
            {
                public static IEnumerable<int> Ask()
                {
                    yield return Second.Two.Number;
                }
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One
            {
                public static int Number => 2;
            }
        }
    }

    namespace ByField
    {
        namespace First
        {
            internal class One : Used
            {
                private readonly Second.Two? two;

                public bool Asks => two is null;
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One;
        }
    }

    namespace ByParameter
    {
        namespace First
        {
            internal class One : Used
            {
                public static bool Ask(Second.Two? two) => two is null;
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One;
        }
    }

    namespace ByArgument
    {
        namespace First
        {
            internal class One : Used
            {
                public static IReadOnlyList<Second.Two> Ask() => [];
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One;
        }
    }

    namespace ByBase
    {
        namespace First
        {
            internal sealed class One : Second.Two;

            internal sealed class Other : Used
            {
                public static int Number => 1;
            }
        }

        namespace Second
        {
            internal class Two
            {
                public static int Ask() => First.Other.Number;
            }
        }
    }

    namespace ByAttribute
    {
        namespace First
        {
            [Second.Two]
            internal sealed class One : Used;
        }

        namespace Second
        {
            [AttributeUsage(AttributeTargets.Class)]
            internal sealed class TwoAttribute : Attribute
            {
                public static Type Of() => typeof(First.One);
            }
        }
    }

    namespace ByTypeOf
    {
        namespace First
        {
            internal class One : Used
            {
                public static Type Ask() => typeof(Second.Two);
            }
        }

        namespace Second
        {
            internal sealed class Two : First.One;
        }
    }
}
