using Stockwright.Larder;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>So much of one cut in the pot, from when to when.</summary>
/// <param name="Id">Name of the ingredient.</param>
/// <param name="Cut">Its class.</param>
/// <param name="Mass">Raw mass as loaded, zero or more.</param>
/// <param name="Collagen">Collagen by mass, 0 to 1.</param>
/// <param name="JoinsAt">When it goes in, since the heat went on.</param>
/// <param name="LeavesAt">When it is lifted or strained out; null when it stays to the end of the history.</param>
/// <param name="PieceSize">Size of the pieces; null for <see cref="CutClass.ReferencePiece"/>.</param>
internal sealed record CutInPot(
    string Id,
    CutClass Cut,
    Mass Mass,
    Ratio Collagen,
    TimeSpan JoinsAt = default,
    TimeSpan? LeavesAt = null,
    Length? PieceSize = null);
