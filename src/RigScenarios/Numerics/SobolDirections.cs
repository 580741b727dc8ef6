// The numbers of this file are S. Joe and F. Y. Kuo's, under this licence:
//
// Copyright (c) 2008, Frances Y. Kuo and Stephen Joe. All rights reserved.
//
// Redistribution and use in source and binary forms, with or without modification, are permitted provided that the following
// conditions are met:
// - Redistributions of source code must retain the above copyright notice, this list of conditions and the following disclaimer.
// - Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the following
//   disclaimer in the documentation and/or other materials provided with the distribution.
// - Neither the names of the copyright holders nor the names of the University of New South Wales and the University of Waikato
//   and its contributors may be used to endorse or promote products derived from this software without specific prior written
//   permission.
//
// THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS "AS IS" AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED
// TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL THE
// COPYRIGHT HOLDERS OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES
// (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS
// INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING
// NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.

namespace RigScenarios.Numerics;

/// <summary>
/// What a Sobol sequence is made of, for the dimensions after the first: S. Joe and F. Y. Kuo, "Constructing Sobol sequences with
/// better two-dimensional projections", SIAM Journal on Scientific Computing 30 (2008), pp. 2635-2654, the authors' file
/// new-joe-kuo-6.21201 (16 September 2010), its first hundred rows.
/// </summary>
internal static class SobolDirections
{
    /// <summary>The rows, from dimension 2 on.</summary>
    public static IReadOnlyList<SobolDirection> All { get; } =
    [
        new(1, 0, [1]),
        new(2, 1, [1, 3]),
        new(3, 1, [1, 3, 1]),
        new(3, 2, [1, 1, 1]),
        new(4, 1, [1, 1, 3, 3]),
        new(4, 4, [1, 3, 5, 13]),
        new(5, 2, [1, 1, 5, 5, 17]),
        new(5, 4, [1, 1, 5, 5, 5]),
        new(5, 7, [1, 1, 7, 11, 19]),
        new(5, 11, [1, 1, 5, 1, 1]),
        new(5, 13, [1, 1, 1, 3, 11]),
        new(5, 14, [1, 3, 5, 5, 31]),
        new(6, 1, [1, 3, 3, 9, 7, 49]),
        new(6, 13, [1, 1, 1, 15, 21, 21]),
        new(6, 16, [1, 3, 1, 13, 27, 49]),
        new(6, 19, [1, 1, 1, 15, 7, 5]),
        new(6, 22, [1, 3, 1, 15, 13, 25]),
        new(6, 25, [1, 1, 5, 5, 19, 61]),
        new(7, 1, [1, 3, 7, 11, 23, 15, 103]),
        new(7, 4, [1, 3, 7, 13, 13, 15, 69]),
        new(7, 7, [1, 1, 3, 13, 7, 35, 63]),
        new(7, 8, [1, 3, 5, 9, 1, 25, 53]),
        new(7, 14, [1, 3, 1, 13, 9, 35, 107]),
        new(7, 19, [1, 3, 1, 5, 27, 61, 31]),
        new(7, 21, [1, 1, 5, 11, 19, 41, 61]),
        new(7, 28, [1, 3, 5, 3, 3, 13, 69]),
        new(7, 31, [1, 1, 7, 13, 1, 19, 1]),
        new(7, 32, [1, 3, 7, 5, 13, 19, 59]),
        new(7, 37, [1, 1, 3, 9, 25, 29, 41]),
        new(7, 41, [1, 3, 5, 13, 23, 1, 55]),
        new(7, 42, [1, 3, 7, 3, 13, 59, 17]),
        new(7, 50, [1, 3, 1, 3, 5, 53, 69]),
        new(7, 55, [1, 1, 5, 5, 23, 33, 13]),
        new(7, 56, [1, 1, 7, 7, 1, 61, 123]),
        new(7, 59, [1, 1, 7, 9, 13, 61, 49]),
        new(7, 62, [1, 3, 3, 5, 3, 55, 33]),
        new(8, 14, [1, 3, 1, 15, 31, 13, 49, 245]),
        new(8, 21, [1, 3, 5, 15, 31, 59, 63, 97]),
        new(8, 22, [1, 3, 1, 11, 11, 11, 77, 249]),
        new(8, 38, [1, 3, 1, 11, 27, 43, 71, 9]),
        new(8, 47, [1, 1, 7, 15, 21, 11, 81, 45]),
        new(8, 49, [1, 3, 7, 3, 25, 31, 65, 79]),
        new(8, 50, [1, 3, 1, 1, 19, 11, 3, 205]),
        new(8, 52, [1, 1, 5, 9, 19, 21, 29, 157]),
        new(8, 56, [1, 3, 7, 11, 1, 33, 89, 185]),
        new(8, 67, [1, 3, 3, 3, 15, 9, 79, 71]),
        new(8, 70, [1, 3, 7, 11, 15, 39, 119, 27]),
        new(8, 84, [1, 1, 3, 1, 11, 31, 97, 225]),
        new(8, 97, [1, 1, 1, 3, 23, 43, 57, 177]),
        new(8, 103, [1, 3, 7, 7, 17, 17, 37, 71]),
        new(8, 115, [1, 3, 1, 5, 27, 63, 123, 213]),
        new(8, 122, [1, 1, 3, 5, 11, 43, 53, 133]),
        new(9, 8, [1, 3, 5, 5, 29, 17, 47, 173, 479]),
        new(9, 13, [1, 3, 3, 11, 3, 1, 109, 9, 69]),
        new(9, 16, [1, 1, 1, 5, 17, 39, 23, 5, 343]),
        new(9, 22, [1, 3, 1, 5, 25, 15, 31, 103, 499]),
        new(9, 25, [1, 1, 1, 11, 11, 17, 63, 105, 183]),
        new(9, 44, [1, 1, 5, 11, 9, 29, 97, 231, 363]),
        new(9, 47, [1, 1, 5, 15, 19, 45, 41, 7, 383]),
        new(9, 52, [1, 3, 7, 7, 31, 19, 83, 137, 221]),
        new(9, 55, [1, 1, 1, 3, 23, 15, 111, 223, 83]),
        new(9, 59, [1, 1, 5, 13, 31, 15, 55, 25, 161]),
        new(9, 62, [1, 1, 3, 13, 25, 47, 39, 87, 257]),
        new(9, 67, [1, 1, 1, 11, 21, 53, 125, 249, 293]),
        new(9, 74, [1, 1, 7, 11, 11, 7, 57, 79, 323]),
        new(9, 81, [1, 1, 5, 5, 17, 13, 81, 3, 131]),
        new(9, 82, [1, 1, 7, 13, 23, 7, 65, 251, 475]),
        new(9, 87, [1, 3, 5, 1, 9, 43, 3, 149, 11]),
        new(9, 91, [1, 1, 3, 13, 31, 13, 13, 255, 487]),
        new(9, 94, [1, 3, 3, 1, 5, 63, 89, 91, 127]),
        new(9, 103, [1, 1, 3, 3, 1, 19, 123, 127, 237]),
        new(9, 104, [1, 1, 5, 7, 23, 31, 37, 243, 289]),
        new(9, 109, [1, 1, 5, 11, 17, 53, 117, 183, 491]),
        new(9, 122, [1, 1, 1, 5, 1, 13, 13, 209, 345]),
        new(9, 124, [1, 1, 3, 15, 1, 57, 115, 7, 33]),
        new(9, 137, [1, 3, 1, 11, 7, 43, 81, 207, 175]),
        new(9, 138, [1, 3, 1, 1, 15, 27, 63, 255, 49]),
        new(9, 143, [1, 3, 5, 3, 27, 61, 105, 171, 305]),
        new(9, 145, [1, 1, 5, 3, 1, 3, 57, 249, 149]),
        new(9, 152, [1, 1, 3, 5, 5, 57, 15, 13, 159]),
        new(9, 157, [1, 1, 1, 11, 7, 11, 105, 141, 225]),
        new(9, 167, [1, 3, 3, 5, 27, 59, 121, 101, 271]),
        new(9, 173, [1, 3, 5, 9, 11, 49, 51, 59, 115]),
        new(9, 176, [1, 1, 7, 1, 23, 45, 125, 71, 419]),
        new(9, 181, [1, 1, 3, 5, 23, 5, 105, 109, 75]),
        new(9, 182, [1, 1, 7, 15, 7, 11, 67, 121, 453]),
        new(9, 185, [1, 3, 7, 3, 9, 13, 31, 27, 449]),
        new(9, 191, [1, 3, 1, 15, 19, 39, 39, 89, 15]),
        new(9, 194, [1, 1, 1, 1, 1, 33, 73, 145, 379]),
        new(9, 199, [1, 3, 1, 15, 15, 43, 29, 13, 483]),
        new(9, 218, [1, 1, 7, 3, 19, 27, 85, 131, 431]),
        new(9, 220, [1, 3, 3, 3, 5, 35, 23, 195, 349]),
        new(9, 227, [1, 3, 3, 7, 9, 27, 39, 59, 297]),
        new(9, 229, [1, 1, 3, 9, 11, 17, 13, 241, 157]),
        new(9, 230, [1, 3, 7, 15, 25, 57, 33, 189, 213]),
        new(9, 234, [1, 1, 7, 1, 9, 55, 73, 83, 217]),
        new(9, 236, [1, 3, 3, 13, 19, 27, 23, 113, 249]),
        new(9, 241, [1, 3, 5, 3, 23, 43, 3, 253, 479]),
        new(9, 244, [1, 1, 5, 5, 11, 5, 45, 117, 217]),
        new(9, 253, [1, 3, 3, 7, 29, 37, 33, 123, 147]),
    ];
}

/// <summary>One dimension: a primitive polynomial modulo 2 and the numbers to begin with.</summary>
/// <param name="Degree">The degree of the polynomial.</param>
/// <param name="Coefficients">Its coefficients between the first and the last, which are 1, as bits.</param>
/// <param name="First">As many odd numbers as the degree, the k-th below 2^k.</param>
internal sealed record SobolDirection(int Degree, uint Coefficients, IReadOnlyList<ulong> First);
