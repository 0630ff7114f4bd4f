namespace Stockwright.Web.Drawing;

/// <summary>A tick of an axis.</summary>
internal readonly record struct AxisTick(double At, string Text);
