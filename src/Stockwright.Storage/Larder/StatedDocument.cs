using Stockwright.Evidence;

namespace Stockwright.Storage.Larder;

/// <summary>A number with its range and source, in the unit of the field that holds it.</summary>
internal sealed record StatedDocument(double Value, double Low, double High, Provenance Provenance, string Source)
{
    public static StatedDocument From<T>(Stated<T> stated, Func<T, double> unit) =>
        new(unit(stated.Value), unit(stated.Low), unit(stated.High), stated.Provenance, stated.Source);

    public static StatedDocument? FromOptional<T>(Stated<T>? stated, Func<T, double> unit) =>
        stated is null ? null : From(stated, unit);

    public Stated<T> To<T>(Func<double, T> unit) => new(unit(Value), unit(Low), unit(High), Provenance, Source);
}
