namespace Stockwright.Storage;

/// <summary>A row that two cooks may edit at once; the version tells the second writer that the row has moved on.</summary>
internal interface IVersioned
{
    int Version { get; set; }
}

/// <summary>A row that belongs to a kitchen and stands in the cook's order.</summary>
internal interface IKitchenRow : IVersioned
{
    int KitchenId { get; set; }

    string Id { get; set; }

    int Position { get; set; }
}
